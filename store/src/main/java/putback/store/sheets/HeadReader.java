package putback.store.sheets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import putback.quantity.Minutes;
import putback.sheet.FollowUp;
import putback.sheet.Height;
import putback.sheet.Lift;
import putback.sheet.Naming;
import putback.sheet.Resort;
import putback.sheet.Setups;
import putback.sheet.Times;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Entry;

/** Reads what a sheet says beside its parts and joints. */
record HeadReader(Fields sheet, Faults faults) {
    /** A logarithm's standard deviation beyond this would say nothing any more. */
    static final BigDecimal WIDEST = BigDecimal.valueOf(3);

    String id() {
        String id = sheet.text("sheet", "sheet");
        if (!Ids.isId(id)) {
            sheet.fault("sheet", "an id has lower case letters, digits and hyphens, such as front-strut");
        }
        return id;
    }

    Lift lift() {
        Fields lift = sheet.map("lift", Keys.LIFT);
        return lift == null ? Lift.NOT_SAID : new Lift(lift.text("points", ""), lift.text("note", ""));
    }

    Times times() {
        Fields times = sheet.map("times", Keys.TIMES);
        return times == null
                ? Times.DEFAULT
                : new Times(
                        times.amounts().real("spread", WIDEST, Times.DEFAULT.spread()),
                        times.amounts().real("common", WIDEST, Times.DEFAULT.common()));
    }

    Setups setups() {
        Fields setups = sheet.map("setups", Keys.SETUPS);
        Setups usual = Setups.DEFAULT;
        return setups == null
                ? usual
                : new Setups(
                        setups.amounts().minutes("height", usual.height()),
                        setups.amounts().minutes("side", usual.side()),
                        setups.amounts().minutes("station", usual.station()),
                        setups.amounts().minutes("tool", usual.tool()));
    }

    List<FollowUp> followUps() {
        List<FollowUp> followUps = new ArrayList<>();
        for (Entry entry : section("follow-ups")) {
            String id = entry.key().text();
            Fields followUp = Fields.of(
                    values(entry, "{minutes: 35}"), entry.key().place(), "follow-up " + id, Keys.FOLLOW_UP, faults);
            followUps.add(new FollowUp(
                    id,
                    followUp.text("name", Naming.fromId(id)),
                    followUp.amounts().minutes("minutes", Minutes.ZERO),
                    followUp.flag("critical"),
                    followUp.word("height", Words.FOLLOWED, Height.ANY),
                    followUp.lists().ids("follows"),
                    followUp.text("source")));
        }
        return followUps;
    }

    List<Resort> resorts() {
        List<Resort> resorts = new ArrayList<>();
        for (Entry entry : section("resorts")) {
            String id = entry.key().text();
            Entries values = values(entry, "{minutes: 6, chance: 0.6}");
            Fields resort = Fields.of(values, entry.key().place(), "resort " + id, Keys.RESORT, faults);
            resort.require("minutes", "chance");
            ResortsReader.words(resort, "when", SeizedWords.REFUSALS);
            Fields breaks = resort.map("breaks", Keys.BREAKS);
            resorts.add(new Resort(
                    id,
                    resort.amounts().minutes("minutes", Minutes.ZERO),
                    resort.amounts().share("chance", 0),
                    breaks == null ? 0 : breaks.amounts().share("chance", 0),
                    breaks == null ? null : breaks.amounts().price("price"),
                    resort.amounts().price("scraps"),
                    resort.lists().ids("when")));
        }
        return resorts;
    }

    private List<Entry> section(String key) {
        Node node = sheet.node(key);
        if (!(node instanceof Entries section)) {
            if (node != null) {
                sheet.fault(key, "this is " + node.phrase() + "; write a map of ids");
            }
            return List.of();
        }
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : section.byKey().values()) {
            if (!Ids.isId(entry.key().text())) {
                faults.add(
                        entry.key().place(), SectionReader.wrongId(entry.key().text()));
            }
            entries.add(entry);
        }
        return entries;
    }

    private Entries values(Entry entry, String example) {
        if (entry.value() instanceof Entries values) {
            return values;
        }
        faults.add(
                entry.place(),
                entry.key().text() + " is " + entry.value().phrase() + "; write a map such as " + example);
        return Entries.none(entry.place());
    }
}
