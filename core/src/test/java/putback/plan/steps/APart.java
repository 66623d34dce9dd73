package putback.plan.steps;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;
import putback.sheet.Aside;
import putback.sheet.Naming;
import putback.sheet.PartEntry;
import putback.sheet.StoredEnergy;
import putback.sheet.Tether;
import putback.sheet.TetherKind;
import putback.sheet.Where;

/** A part entry with the defaults of the format. */
public final class APart {
    private final String id;
    private Where where;
    private Minutes handling = Minutes.of("0.3");
    private @Nullable BigDecimal price;
    private List<String> companions = List.of();
    private boolean pair;
    private boolean axleSet;
    private List<String> prepare = List.of();
    private @Nullable Aside aside;
    private @Nullable Tether tether;
    private StoredEnergy energy = StoredEnergy.NONE;

    APart(String id, Where where) {
        this.id = id;
        this.where = where;
    }

    public APart shared() {
        where = Where.ONCE;
        return this;
    }

    public APart handling(String minutes) {
        handling = Minutes.of(minutes);
        return this;
    }

    public APart price(String money) {
        price = new BigDecimal(money);
        return this;
    }

    public APart companions(String... ids) {
        companions = List.of(ids);
        return this;
    }

    public APart pair() {
        pair = true;
        return this;
    }

    public APart soldAsAxleSet() {
        axleSet = true;
        return this;
    }

    public APart prepare(String... items) {
        prepare = List.of(items);
        return this;
    }

    public APart aside(String minutes, @Nullable String aid, String... open) {
        aside = new Aside(List.of(open), Minutes.of(minutes), aid);
        return this;
    }

    public APart tether(TetherKind kind) {
        tether = new Tether(kind, null, null);
        return this;
    }

    public APart stores(StoredEnergy stored) {
        energy = stored;
        return this;
    }

    PartEntry entry() {
        return new PartEntry(
                id,
                where,
                Naming.fromId(id),
                handling,
                price,
                companions,
                pair,
                axleSet,
                prepare,
                aside,
                tether,
                energy,
                null);
    }
}
