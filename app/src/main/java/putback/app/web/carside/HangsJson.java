package putback.app.web.carside;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import putback.app.json.JsonWriter;
import putback.sheet.Assembly;
import putback.sheet.Joint;
import putback.sheet.JointKind;
import putback.sheet.Part;
import putback.sheet.Tether;
import putback.sheet.TetherKind;

/** For each part: the fixings that a new one hangs on, what follows from opening them, and whether brake fluid is in it. */
final class HangsJson {
    private HangsJson() {}

    static void write(Assembly assembly, JsonWriter json) {
        json.key("hangs").beginObject();
        for (Part part : assembly.parts()) {
            if (!part.isBody()) {
                json.key(part.id());
                part(assembly, part, json);
            }
        }
        json.endObject();
    }

    private static void part(Assembly assembly, Part part, JsonWriter json) {
        List<String> joints = new ArrayList<>();
        Set<String> followUps = new LinkedHashSet<>();
        boolean hydraulic = false;
        for (Joint joint : assembly.joints()) {
            if (joint.joins().contains(part.index())) {
                joints.add(joint.id());
                followUps.addAll(joint.entry().brings());
                hydraulic |= carriesFluid(assembly, joint);
            }
        }
        json.beginObject().key("joints").strings(joints);
        json.key("followUps").strings(List.copyOf(followUps));
        json.key("hydraulic").value(hydraulic).endObject();
    }

    /** A union does, and so does whatever is screwed to a hose. */
    private static boolean carriesFluid(Assembly assembly, Joint joint) {
        JointKind kind = joint.entry().kind();
        if (kind == JointKind.UNION) {
            return true;
        }
        for (int neighbour : joint.joins()) {
            Tether tether = assembly.parts().get(neighbour).entry().tether();
            if (tether != null
                    && tether.kind() == TetherKind.HOSE
                    && !joint.entry().brings().isEmpty()) {
                return true;
            }
        }
        return false;
    }
}
