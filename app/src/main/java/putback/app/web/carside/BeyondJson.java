package putback.app.web.carside;

import java.util.Map;
import putback.app.json.JsonWriter;
import putback.app.ladder.Figures;
import putback.ledger.JointState;
import putback.ledger.Standing;
import putback.plan.tools.Limits;
import putback.quantity.Torque;
import putback.sheet.Fastener;
import putback.sheet.Joint;
import putback.sheet.Tightening;

/**
 * What was touched and is in no step of the plan, as after the plan was changed while the car stood there: how tight the
 * sheet wants it, so that it can be closed again at the car.
 */
final class BeyondJson {
    private final Standing standing;
    private final Iterable<Joint> joints;

    BeyondJson(CarsideJob here) {
        standing = here.onward().standing();
        joints = here.plan().assembly().joints();
    }

    void write(JsonWriter json) {
        Map<String, JointState> states = standing.joints();
        json.key("beyond").beginObject();
        for (Joint joint : joints) {
            JointState state = states.getOrDefault(joint.id(), JointState.UNTOUCHED);
            if (state != JointState.UNTOUCHED && !standing.promised().joints().containsKey(joint.id())) {
                json.key(joint.id());
                fixing(json, joint);
            }
        }
        json.endObject();
    }

    private static void fixing(JsonWriter json, Joint joint) {
        Fastener fastener = joint.fastener();
        json.beginObject();
        json.key("threaded").value(joint.entry().kind().threaded());
        json.key("once").value(fastener.singleUse());
        json.key("tightenAt").value(fastener.tighten().word());
        json.key("torque").value(Figures.unknown(fastener) ? "" : Figures.firstUnit(fastener));
        json.key("source").value(fastener.source() == null ? "" : fastener.source());
        Tightening asked = fastener.tightening();
        if (asked instanceof Tightening.ToTorque one) {
            figures(json, one.torque(), fastener);
        } else if (asked instanceof Tightening.TorqueThenAngle both) {
            figures(json, both.torque(), fastener);
            json.key("angleDeg").number(both.angle().degrees());
        }
        json.endObject();
    }

    private static void figures(JsonWriter json, Torque torque, Fastener fastener) {
        Torque low = fastener.windowLow();
        Torque high = fastener.windowHigh();
        Limits usual = Limits.usual(torque);
        json.key("torqueNm").number(torque.newtonMetres());
        json.key("windowNm").beginArray();
        json.number((low == null ? usual.least() : low).newtonMetres());
        json.number((high == null ? usual.most() : high).newtonMetres());
        json.endArray();
    }
}
