package putback.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import putback.ledger.Debt.Kind;

/** Which parts are off, aside or hung, which are new, which aids are on. */
final class PartStory {
    private final Promised promised;
    final Set<String> off = new LinkedHashSet<>();
    final Set<String> aside = new LinkedHashSet<>();
    final Set<String> letDown = new LinkedHashSet<>();
    final Set<String> renewed = new LinkedHashSet<>();
    final Set<String> broken = new LinkedHashSet<>();
    /** Aid and part, in the order in which they were put on. */
    private final Map<String, AidOn> aids = new LinkedHashMap<>();

    PartStory(Promised promised) {
        this.promised = promised;
    }

    PartStory copy() {
        PartStory copy = new PartStory(promised);
        copy.off.addAll(off);
        copy.aside.addAll(aside);
        copy.letDown.addAll(letDown);
        copy.renewed.addAll(renewed);
        copy.broken.addAll(broken);
        copy.aids.putAll(aids);
        return copy;
    }

    List<AidOn> aids() {
        return List.copyOf(aids.values());
    }

    void add(Event event) {
        String part = event.part();
        if (part == null) {
            return;
        }
        switch (event.did()) {
            case TAKE_OFF -> {
                off.addAll(together(event, part));
                aside.removeAll(together(event, part));
            }
            case OFFER_UP -> {
                off.removeAll(together(event, part));
                aside.removeAll(together(event, part));
            }
            case RENEW -> {
                renewed.addAll(together(event, part));
                broken.removeAll(together(event, part));
            }
            case BREAK -> broken.add(part);
            case SUPPORT, ASIDE -> putOn(event, part);
            case RELEASE -> release(event, part);
            case LET_DOWN -> letDown.add(part);
            case JACK_UP -> letDown.remove(part);
            default -> {}
        }
    }

    private boolean hasAid(String part) {
        for (AidOn aid : aids.values()) {
            if (aid.part().equals(part)) {
                return true;
            }
        }
        return false;
    }

    /** An aside needs no aid; a support that names none has one all the same. */
    private void putOn(Event event, String part) {
        String aid = event.aid();
        if (event.did() == Did.ASIDE) {
            aside.add(part);
            aid = aid == null ? promised.aidOfAside(part) : aid;
            if (aid == null) {
                return;
            }
        }
        AidOn on = new AidOn(aid == null ? "" : aid, part);
        aids.put(on.aid() + " " + part, on);
    }

    /** A release that names no aid takes all of them off the part. */
    private void release(Event event, String part) {
        String aid = event.aid();
        aids.values().removeIf(one -> one.part().equals(part) && (aid == null || aid.equals(one.aid())));
        if (!hasAid(part)) {
            aside.remove(part);
        }
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
            debts.add(Debt.ofPart(Kind.PART_OFF, part, "still off the car"));
        }
        for (AidOn aid : aids.values()) {
            debts.add(Debt.ofPart(Kind.AID_LEFT, aid.part(), aid.name() + " still on it"));
        }
        for (String part : promised.renewed().keySet()) {
            if (!renewed.contains(part)) {
                debts.add(Debt.ofPart(Kind.NOT_RENEWED, part, "to be renewed, and no new one is on record"));
            }
        }
        return debts;
    }
}
