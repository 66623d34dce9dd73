package putback.store.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import putback.sheet.Assembled;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.JointEntry;
import putback.sheet.Nearest;
import putback.sheet.Part;
import putback.sheet.PartEntry;
import putback.sheet.Sheet;
import putback.sheet.SheetFault;
import putback.sheet.Times;
import putback.sheet.UnitEntry;
import putback.store.sheets.Node.Entries;

/** Builds the model from a merged sheet, and gathers what the model finds wrong with what the reader found. */
final class Building {
    private final Entries merged;
    private final boolean whole;
    private final String name;
    private final Faults faults;
    private final Located located;
    private final Removals removals;

    Building(Bases.Loaded loaded, String name, Faults faults) {
        this.merged = loaded.merged();
        this.whole = loaded.whole();
        this.name = name;
        this.faults = faults;
        this.located = new Located(loaded.merged());
        this.removals = loaded.removals();
    }

    Read build() {
        Fields fields = Fields.ofSheet(merged, faults);
        if (!fields.has("sheet")) {
            faults.add(merged.place(), "the sheet has no id; write one at the top, such as sheet: front-strut");
        }
        if (whole) {
            fields.require("title", "parts", "joints");
        }
        boolean sides = fields.word("sides", Words.SIDES, fields.has("sides"));
        SectionReader sections = new SectionReader(fields, sides, faults);
        List<Sided> parts = sections.section("parts");
        List<Sided> joints = sections.section("joints");
        List<Sided> units = sections.section("units");
        Sheet sheet =
                sheet(new HeadReader(fields, faults), fields, sides, orNone(parts), orNone(joints), orNone(units));
        boolean judged = whole && parts != null && joints != null && units != null;
        return judged && fields.has("parts") && fields.has("joints")
                ? assembled(Assembly.of(sheet))
                : new Read.Faulty(faults.sorted());
    }

    private Read assembled(Assembled assembled) {
        if (assembled instanceof Assembled.Faulty faulty) {
            for (SheetFault fault : faulty.faults()) {
                tell(fault, located.of(fault.path()));
            }
        }
        if (assembled instanceof Assembled.Sound sound && merged.get("base") != null) {
            joined(sound.assembly());
        }
        return faults.isEmpty() && assembled instanceof Assembled.Sound sound
                ? new Read.Sheet(sound.assembly(), name)
                : new Read.Faulty(faults.sorted());
    }

    /** A part that nothing joins was meant to change one of the base. */
    private void joined(Assembly assembly) {
        Set<String> joined = new TreeSet<>();
        for (Joint joint : assembly.joints()) {
            for (int part : joint.joins()) {
                joined.add(assembly.parts().get(part).entry().id());
            }
        }
        for (Part part : assembly.parts()) {
            String id = part.entry().id();
            String near = part.isBody() || joined.contains(id) ? "" : Nearest.to(id, joined);
            if (!near.isEmpty()) {
                faults.addUnlessTold(
                        located.ofEntry("parts", part.side().prefix() + id, id),
                        "part " + id + " is in no joint; perhaps you meant " + near);
            }
        }
    }

    /** Who removes what another file still names hears of it at the line that removes it. */
    private void tell(SheetFault fault, Place at) {
        Place removed = removals.of(fault.missing());
        if (removed == null || removed.file().equals(at.file())) {
            faults.addUnlessTold(at, fault.message());
            return;
        }
        String id = fault.missing().substring(fault.missing().indexOf('/') + 1);
        String user = fault.path().get(1);
        faults.add(
                removed,
                id + " is removed here, but " + user + " still names it (" + at.file() + ":" + at.line() + ":"
                        + at.column() + "); remove that too, or give it something else");
    }

    private static List<Sided> orNone(@Nullable List<Sided> section) {
        return section == null ? List.of() : section;
    }

    private Sheet sheet(
            HeadReader head, Fields fields, boolean sides, List<Sided> parts, List<Sided> joints, List<Sided> units) {
        located.put("parts", parts);
        located.put("joints", joints);
        located.put("units", units);
        Times times = head.times();
        PartReader partReader = new PartReader(described(units, "parts"), faults);
        JointReader jointReader = new JointReader(times, described(joints, "joins"), faults);
        List<PartEntry> partEntries = new ArrayList<>();
        List<JointEntry> jointEntries = new ArrayList<>();
        List<UnitEntry> unitEntries = new ArrayList<>();
        for (Sided part : parts) {
            partEntries.add(partReader.part(part));
        }
        for (Sided joint : joints) {
            jointEntries.add(jointReader.joint(joint));
        }
        for (Sided unit : units) {
            unitEntries.add(partReader.unit(unit));
        }
        unambiguous(partEntries, units);
        return new Sheet(
                head.id(),
                fields.text("title", head.id()),
                head.lift(),
                sides,
                partEntries,
                jointEntries,
                unitEntries,
                head.followUps(),
                times,
                head.resorts(),
                head.setups());
    }

    /** Ids of the entries that say what they are, and do not only change something. */
    private static Set<String> described(List<Sided> entries, String key) {
        Set<String> ids = new TreeSet<>();
        for (Sided entry : entries) {
            if (entry.values().get(key) != null) {
                ids.add(entry.id());
            }
        }
        return ids;
    }

    private void unambiguous(List<PartEntry> parts, List<Sided> units) {
        Set<String> ids = new HashSet<>(List.of(Sheet.BODY));
        for (PartEntry part : parts) {
            ids.add(part.id());
        }
        for (Sided unit : units) {
            if (ids.contains(unit.id())) {
                faults.add(unit.at(), unit.id() + " is the id of a part too; a unit needs an id of its own");
            }
        }
    }
}
