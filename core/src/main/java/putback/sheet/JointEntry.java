package putback.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;

/**
 * A joint as a sheet describes it. Ids are as written: without side, or with {@code left.}, {@code right.} or
 * {@code other.} before them.
 *
 * @param joins two or more parts
 * @param reachOnWheels what is in the way when it is done on wheels, instead of {@code behind}; null when the sheet
 *     does not say
 * @param after joints that have to be open before this one
 * @param aheadOf joints that come later if both are opened
 * @param breakLooseOnWheels first broken loose while the car stands on its wheels
 * @param withNew what differs once a part is a new one
 * @param tool null when the hex says it; {@code hand} for bare hands
 * @param height on which height it is opened and closed: raised, on wheels or any
 * @param spread standard deviation of the logarithm of its minutes
 * @param resorts ids of ways to undo it when it will not move; empty for the default of its kind
 * @param exposure 0 to 1, how much road dirt and salt reach it; null for the default of its station
 */
public record JointEntry(
        String id,
        Where where,
        String name,
        List<String> joins,
        JointKind kind,
        Fastener fastener,
        Access behind,
        @Nullable Access reachOnWheels,
        List<String> after,
        List<String> aheadOf,
        List<LetsGo> letsGo,
        List<String> spoils,
        boolean breakLooseOnWheels,
        Timing timing,
        boolean pivot,
        Wording wording,
        List<WithNew> withNew,
        List<String> brings,
        @Nullable String tool,
        Station station,
        Height height,
        Minutes open,
        Minutes close,
        double spread,
        List<String> resorts,
        @Nullable Double exposure) {
    public JointEntry {
        joins = List.copyOf(joins);
        after = List.copyOf(after);
        aheadOf = List.copyOf(aheadOf);
        letsGo = List.copyOf(letsGo);
        spoils = List.copyOf(spoils);
        withNew = List.copyOf(withNew);
        brings = List.copyOf(brings);
        resorts = List.copyOf(resorts);
    }
}
