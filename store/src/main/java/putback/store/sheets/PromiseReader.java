package putback.store.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import putback.ledger.Promised;
import putback.quantity.Torque;
import putback.sheet.Height;
import putback.store.sheets.Node.Entries;
import putback.store.sheets.Node.Items;
import putback.tightening.ReadingWindow;

/** Reads from a plan what it promised. Keys that are not needed here are left alone, since plans may have more. */
final class PromiseReader {
    private final Faults faults;
    private final Map<String, Promised.Fixing> joints = new LinkedHashMap<>();
    private final Map<String, List<String>> renewed = new LinkedHashMap<>();
    private final Map<String, List<String>> followUps = new LinkedHashMap<>();
    private final Map<String, List<String>> leaves = new LinkedHashMap<>();
    private final Map<String, List<String>> comes = new LinkedHashMap<>();

    PromiseReader(Faults faults) {
        this.faults = faults;
    }

    /** Null, with the fault told, when it is no plan. */
    @Nullable
    Promised promised(Entries top) {
        if (!(top.get("steps") instanceof Items steps)) {
            faults.add(top.place(), "this is no plan: it has no list of steps; write one with putback plan --json");
            return null;
        }
        for (Node step : steps.items()) {
            if (step instanceof Entries entries) {
                step(new JsonFields(entries, faults));
            } else {
                faults.add(step.place(), "a step is a map, this is " + step.phrase());
            }
        }
        for (String id : new JsonFields(top, faults).texts("followUps")) {
            followUps.putIfAbsent(id, List.of());
        }
        return new Promised(joints, renewed, followUps, leaves, comes);
    }

    private void step(JsonFields step) {
        String act = step.text("do");
        String part = step.text("part");
        String joint = step.text("joint");
        if (act == null) {
            faults.add(step.place(), "a step has no do, which it needs");
            return;
        }
        switch (act) {
            case "undo", "start" -> joint(joint, act.equals("start") && step.is("fasteners", "new"));
            case "tighten" -> tighten(step, joint);
            case "second-look" -> looked(joint);
            case "take-off" -> moved(leaves, part, step);
            case "offer-up" -> moved(comes, part, step);
            case "renew" -> moved(renewed, part, step);
            case "follow-up" -> followUp(step);
            default -> {}
        }
    }

    private void joint(@Nullable String joint, boolean isNew) {
        if (joint != null) {
            joints.put(joint, isNew ? known(joint).renewed() : known(joint));
        }
    }

    private Promised.Fixing known(String joint) {
        return joints.getOrDefault(joint, Promised.Fixing.PLAIN);
    }

    private void tighten(JsonFields step, @Nullable String joint) {
        if (joint == null) {
            faults.add(step.place(), "a step that tightens names no joint");
            return;
        }
        Promised.Fixing known = known(joint);
        Double torque = step.number("torqueNm");
        List<Double> window = step.numbers("windowNm");
        boolean given = window.size() == 2;
        Height asked = step.height("tightenAt");
        Height height = asked == null ? step.height("height") : asked;
        joints.put(
                joint,
                new Promised.Fixing(
                        true,
                        torque,
                        step.number("angleDeg"),
                        torque == null
                                ? null
                                : Double.valueOf(
                                        given
                                                ? window.get(0)
                                                : ReadingWindow.usualLeast(new Torque(torque))
                                                        .newtonMetres()),
                        torque == null
                                ? null
                                : Double.valueOf(
                                        given
                                                ? window.get(1)
                                                : ReadingWindow.usualMost(new Torque(torque))
                                                        .newtonMetres()),
                        height == null ? Height.ANY : height,
                        known.newFastener() || step.is("fasteners", "new"),
                        known.secondLook()));
    }

    private void looked(@Nullable String joint) {
        if (joint != null) {
            joints.put(joint, known(joint).lookedAt());
        }
    }

    private static void moved(Map<String, List<String>> to, @Nullable String part, JsonFields step) {
        if (part != null) {
            to.put(part, step.texts("with"));
        }
    }

    private void followUp(JsonFields step) {
        String id = step.text("followUp");
        if (id == null) {
            return;
        }
        List<String> brought = new ArrayList<>();
        for (String why : step.texts("why")) {
            if (joints.containsKey(why)) {
                brought.add(why);
            }
        }
        followUps.put(id, brought);
    }
}
