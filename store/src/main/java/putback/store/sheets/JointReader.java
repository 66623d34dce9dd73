package putback.store.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;
import putback.sheet.Access;
import putback.sheet.Fastener;
import putback.sheet.Height;
import putback.sheet.JointEntry;
import putback.sheet.JointKind;
import putback.sheet.LetsGo;
import putback.sheet.Naming;
import putback.sheet.Station;
import putback.sheet.Times;
import putback.sheet.Timing;
import putback.sheet.Wording;
import putback.store.sheets.Node.Entries;

/**
 * Reads what a sheet says of its joints.
 *
 * @param times where a joint's spread comes from when it gives none
 * @param described ids of joints that say what they join
 */
record JointReader(Times times, Set<String> described, Faults faults) {
    private static final double NOT_SAID = -1;
    private static final String LETTING = "{part: carrier, aid: strap}";

    JointEntry joint(Sided sided) {
        String what = "joint " + sided.key();
        Fields joint = Fields.of(sided.values(), sided.at(), what, Keys.JOINT, faults);
        if (joint.has("joins") || joint.has("kind") || !joint.isMisspelt(sided.id(), described)) {
            joint.require("joins", "kind");
        }
        Lists lists = joint.lists();
        JointKind kind = joint.word("kind", Words.KINDS, JointKind.BOLT);
        FastenerReader fasteners = new FastenerReader(faults);
        Fastener fastener = fasteners.fastener(joint);
        Access behind = lists.access("behind");
        Fields minutes = joint.map("minutes", Keys.MINUTES);
        return new JointEntry(
                sided.id(),
                sided.where(),
                joint.text("name", Naming.fromId(sided.id())),
                joins(joint),
                kind,
                fastener,
                behind == null ? Access.FREE : behind,
                lists.access("reach-on-wheels"),
                lists.ids("after"),
                lists.ids("ahead-of"),
                letsGo(joint),
                lists.ids("spoils"),
                joint.word("break-loose", Words.BREAK_LOOSE, Height.ANY) == Height.ON_WHEELS,
                new Timing(lists.ids("loosen-before"), lists.ids("tighten-after")),
                joint.flag("pivot"),
                wording(lists),
                fasteners.withNew(sided.values(), what),
                lists.ids("brings"),
                joint.text("tool"),
                joint.word("station", Words.STATIONS, Station.WHEEL_WELL),
                joint.word("height", Words.OPENED, Height.RAISED),
                minutes(minutes, "open", kind.defaultOpen().times(fastener.count())),
                minutes(minutes, "close", kind.defaultClose().times(fastener.count())),
                minutes == null ? times.spread() : minutes.amounts().real("spread", HeadReader.WIDEST, times.spread()),
                lists.ids("resorts"),
                exposure(joint));
    }

    private static List<String> joins(Fields joint) {
        List<String> joins = joint.lists().ids("joins");
        if (joint.has("joins") && joins.size() < 2) {
            joint.fault("joins", "a joint holds two or more parts together; name them, such as [strut, carrier]");
        }
        return joins;
    }

    private static Minutes minutes(@Nullable Fields minutes, String key, Minutes otherwise) {
        return minutes == null ? otherwise : minutes.amounts().minutes(key, otherwise);
    }

    private static @Nullable Double exposure(Fields joint) {
        double exposure = joint.amounts().share("exposure", NOT_SAID);
        return exposure < 0 ? null : exposure;
    }

    private List<LetsGo> letsGo(Fields joint) {
        List<LetsGo> letsGo = new ArrayList<>();
        for (Entries map : joint.lists().maps("lets-go", LETTING)) {
            Fields letting = Fields.of(map, map.place(), "lets-go", Keys.LETS_GO, faults);
            letting.require("part", "aid");
            String aid = letting.text("aid", "strap");
            boolean letDown = letting.word("then", Words.THEN, false);
            if (letDown && !aid.contains("jack")) {
                letting.fault("then", "only a jack lets a part down; write aid: jack, or leave this out");
            }
            letsGo.add(new LetsGo(letting.text("part", "?"), aid, letDown));
        }
        return letsGo;
    }

    private static Wording wording(Lists lists) {
        return new Wording(
                lists.texts("before-opening"),
                lists.texts("mark"),
                lists.texts("look"),
                lists.texts("stays-shut"),
                lists.texts("before-closing"));
    }
}
