package putback.plan.steps;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import putback.quantity.Minutes;
import putback.sheet.Fastener;
import putback.sheet.FollowUp;
import putback.sheet.Joint;
import putback.sheet.Part;
import putback.sheet.Side;
import putback.sheet.Station;

/** A step being written: what it is, before its number, height and set-up are known. */
final class Draft {
    final Act act;
    final @Nullable Joint joint;
    final @Nullable Part part;
    final Side side;
    final @Nullable Station station;
    final List<String> cautions = new ArrayList<>();
    final String text;
    List<Part> with = List.of();

    @Nullable
    String aid;

    @Nullable
    FollowUp followUp;

    @Nullable
    Fastener fastener;

    String tool = "";
    String toolKey = "";
    String hold = "";
    Minutes minutes = Minutes.ZERO;
    List<String> stages = List.of();

    private Draft(
            Act act, @Nullable Joint joint, @Nullable Part part, Side side, @Nullable Station station, String text) {
        this.act = act;
        this.joint = joint;
        this.part = part;
        this.side = side;
        this.station = station;
        this.text = text;
    }

    static Draft of(Act act, String text) {
        return new Draft(act, null, null, Side.NONE, null, text);
    }

    /** At a joint: where it is and on its side. */
    static Draft at(Act act, Joint joint, String text) {
        return new Draft(act, joint, null, joint.side(), joint.entry().station(), text);
    }

    /** With a part in hand: on its side, wherever the mechanic stands. */
    static Draft with(Act act, Part part, String text) {
        return new Draft(act, null, part, part.side(), null, text);
    }

    static Draft withAt(Act act, Part part, Station station, String text) {
        return new Draft(act, null, part, part.side(), station, text);
    }

    Draft together(List<Part> others) {
        with = others;
        return this;
    }

    Draft aid(@Nullable String name) {
        aid = name;
        return this;
    }

    Draft followUp(FollowUp work) {
        followUp = work;
        return this;
    }

    /** The fastener as it is at this step, and what turns and holds it. */
    Draft turning(Joint at, Fastener now) {
        fastener = now;
        tool = ToolText.tool(at, now);
        toolKey = ToolText.key(at, now);
        hold = ToolText.hold(now);
        return this;
    }

    Draft byHand(Fastener now) {
        fastener = now;
        tool = ToolText.HAND;
        return this;
    }

    Draft minutes(Minutes work) {
        minutes = work;
        return this;
    }

    Draft stages(List<String> passes) {
        stages = passes;
        return this;
    }

    Draft caution(List<String> lines) {
        cautions.addAll(lines);
        return this;
    }
}
