package putback.store.sheets;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import putback.quantity.Distance;
import putback.quantity.Minutes;
import putback.sheet.Aside;
import putback.sheet.Life;
import putback.sheet.Naming;
import putback.sheet.PartEntry;
import putback.sheet.StoredEnergy;
import putback.sheet.Tether;
import putback.sheet.TetherKind;
import putback.sheet.UnitEntry;
import putback.sheet.Where;

/**
 * Reads what a sheet says of its parts, and of the units that they are renewed in.
 *
 * @param described ids of units that name their parts
 */
record PartReader(Set<String> described, Faults faults) {
    /** Common practice, no source. */
    static final Minutes HANDLING = Minutes.of("0.3");

    private static final BigDecimal STEEPEST = BigDecimal.valueOf(50);

    PartEntry part(Sided sided) {
        Fields part = Fields.of(sided.values(), sided.at(), "part " + sided.key(), Keys.PART, faults);
        if (part.flag("shared") && sided.where() != Where.ONCE) {
            part.fault("shared", "what is described for one side cannot be shared; remove one of the two");
        }
        return new PartEntry(
                sided.id(),
                sided.where(),
                part.text("name", Naming.fromId(sided.id())),
                part.amounts().minutes("minutes", HANDLING),
                part.amounts().price("price"),
                part.lists().ids("companions"),
                part.flag("pair"),
                part.word("sold", Words.SOLD, false),
                part.lists().texts("prepare"),
                aside(part),
                tether(part),
                part.word("stored-energy", Words.ENERGIES, StoredEnergy.NONE),
                life(part));
    }

    UnitEntry unit(Sided sided) {
        Fields unit = Fields.of(sided.values(), sided.at(), "unit " + sided.key(), Keys.UNIT, faults);
        if (unit.has("parts") || !unit.isMisspelt(sided.id(), described)) {
            unit.require("parts");
        }
        List<String> parts = unit.lists().ids("parts");
        if (unit.has("parts") && parts.isEmpty()) {
            unit.fault("parts", "a unit without parts cannot be renewed; name its parts");
        }
        return new UnitEntry(
                sided.id(),
                sided.where(),
                unit.text("name", Naming.fromId(sided.id())),
                parts,
                unit.amounts().price("price"),
                unit.flag("pair"),
                unit.word("sold", Words.SOLD, false),
                unit.lists().ids("companions"),
                unit.lists().texts("prepare"));
    }

    private static @Nullable Aside aside(Fields part) {
        Fields aside = part.map("aside", Keys.ASIDE);
        return aside == null
                ? null
                : new Aside(aside.lists().ids("open"), aside.amounts().minutes("minutes", HANDLING), aside.text("aid"));
    }

    private static @Nullable Tether tether(Fields part) {
        Fields tether = part.map("tether", Keys.TETHER);
        if (tether == null) {
            return null;
        }
        tether.require("kind");
        return new Tether(
                tether.word("kind", Words.TETHERS, TetherKind.HOSE),
                tether.amounts().length("free", false),
                tether.amounts().length("plunge", true));
    }

    private static @Nullable Life life(Fields part) {
        Fields life = part.map("life", Keys.LIFE);
        if (life == null) {
            return null;
        }
        life.require("median", "shape");
        Distance median = life.amounts().distance("median");
        Double shape = life.amounts().positive("shape", STEEPEST);
        return median == null || shape == null ? null : new Life(median.kilometres(), shape);
    }
}
