package putback.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import putback.ledger.Debt.Kind;

/** Which parts are off, which are new, which aids are on. */
final class PartStory {
    private final Promised promised;
    private final Set<String> off = new LinkedHashSet<>();
    private final Set<String> renewed = new LinkedHashSet<>();
    private final Set<String> broken = new LinkedHashSet<>();
    /** Aid and part, in the order in which they were put on. */
    private final Map<String, Aid> aids = new LinkedHashMap<>();

    private record Aid(String name, String part) {}

    PartStory(Promised promised) {
        this.promised = promised;
    }

    void add(Event event) {
        String part = event.part();
        if (part == null) {
            return;
        }
        switch (event.did()) {
            case TAKE_OFF -> off.addAll(together(event, part));
            case OFFER_UP -> off.removeAll(together(event, part));
            case RENEW -> {
                renewed.addAll(together(event, part));
                broken.removeAll(together(event, part));
            }
            case BREAK -> broken.add(part);
            case SUPPORT, ASIDE -> {
                String aid = event.aid() == null ? "" : event.aid();
                aids.put(aid + " " + part, new Aid(aid, part));
            }
            case RELEASE -> release(event, part);
            default -> {}
        }
    }

    /** A release that names no aid takes all of them off the part. */
    private void release(Event event, String part) {
        String aid = event.aid();
        aids.values().removeIf(one -> one.part.equals(part) && (aid == null || aid.equals(one.name)));
    }

    private Set<String> together(Event event, String part) {
        Set<String> all = new LinkedHashSet<>(Set.of(part));
        all.addAll(event.with());
        if (event.with().isEmpty()) {
            Map<String, List<String>> known =
                    switch (event.did()) {
                        case RENEW -> promised.renewed();
                        case OFFER_UP -> promised.comes();
                        default -> promised.leaves();
                    };
            all.addAll(known.getOrDefault(part, List.of()));
        }
        return all;
    }

    List<Debt> debts() {
        List<Debt> debts = new ArrayList<>();
        for (String part : broken) {
            debts.add(Debt.ofPart(Kind.BROKEN, part, "damaged, and not renewed since"));
        }
        for (String part : off) {
            debts.add(Debt.ofPart(Kind.PART_OFF, part, "off the car"));
        }
        for (Aid aid : aids.values()) {
            debts.add(
                    Debt.ofPart(Kind.AID_LEFT, aid.part, (aid.name.isEmpty() ? "an aid" : aid.name) + " still on it"));
        }
        for (String part : promised.renewed().keySet()) {
            if (!renewed.contains(part)) {
                debts.add(Debt.ofPart(Kind.NOT_RENEWED, part, "to be renewed, and no new one is on record"));
            }
        }
        return debts;
    }
}
