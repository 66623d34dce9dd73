package putback.plan.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import putback.plan.selection.Selected;
import putback.plan.selection.Selector;
import putback.plan.selection.Wanted;
import putback.sheet.Assembly;
import putback.sheet.Height;
import putback.sheet.JointKind;
import putback.sheet.Station;
import putback.sheet.StoredEnergy;
import putback.sheet.TetherKind;

/** Random wishes, random sound orders and random sheets: every trip keeps to the rules. */
class RoundTripRandomTest {
    private static final int TRIPS = 60;
    private static final List<String> AIDS = List.of("strap", "jack", "spring compressor");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void everyWishForAStrutCorner_inAnyOrder_isSoundBothWays(long seed) {
        Random random = new Random(seed);
        Assembly car = Cars.strut();
        for (int i = 0; i < TRIPS; i++) {
            check(car, random, "seed " + seed + ", trip " + i);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void everyRandomSheet_isSoundBothWays(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < TRIPS; i++) {
            check(sheet(random), random, "seed " + seed + ", sheet " + i);
        }
    }

    private static void check(Assembly car, Random random, String name) {
        Wanted wanted = wish(car, random);
        if (Selector.least(car, wanted) instanceof Selected.Sound sound) {
            Sound.check(Travelled.of(car, wanted, sound.selection(), random), name);
        }
    }

    private static Wanted wish(Assembly car, Random random) {
        List<String> names = new ArrayList<>();
        for (int count = 1 + random.nextInt(3); count > 0; count--) {
            boolean unit = !car.units().isEmpty() && random.nextInt(5) == 0;
            names.add(
                    unit
                            ? car.units()
                                    .get(random.nextInt(car.units().size()))
                                    .id()
                            : car.parts()
                                    .get(1 + random.nextInt(car.parts().size() - 1))
                                    .id());
        }
        return ASheet.wanted(car, names.stream().distinct().toArray(String[]::new));
    }

    private static boolean oneIn(int many, Random random) {
        return random.nextInt(many) == 0;
    }

    private static Assembly sheet(Random random) {
        ASheet sheet = random.nextBoolean() ? ASheet.bothSides() : ASheet.oneSide();
        int parts = 4 + random.nextInt(6);
        for (int i = 0; i < parts; i++) {
            part(sheet, random, i);
        }
        for (int i = 0; i < parts; i++) {
            String to = i == 0 || oneIn(3, random) ? "body" : "p" + random.nextInt(i);
            joint(sheet, random, i, parts, "p" + i, to);
        }
        for (int extra = random.nextInt(5); extra > 0; extra--) {
            int one = random.nextInt(parts);
            int other = random.nextInt(parts);
            joint(sheet, random, parts + extra, parts, "p" + one, one == other ? "body" : "p" + other);
        }
        sheet.followUp("f0", "3", true, Height.RAISED);
        sheet.followUp("f1", "2", true, Height.ANY, "f0");
        sheet.followUp("f2", "9", false, Height.ON_WHEELS);
        sheet.followUp("f3", "4", false, Height.ANY);
        return sheet.assembly();
    }

    private static void part(ASheet sheet, Random random, int index) {
        APart part = sheet.part("p" + index).handling("0." + (1 + random.nextInt(8)) + "37");
        switch (random.nextInt(10)) {
            case 0 -> part.tether(TetherKind.HOSE);
            case 1 -> part.stores(StoredEnergy.SPRING);
            case 2 -> part.aside("0.31", random.nextBoolean() ? "strap" : null, "j" + index);
            case 3 -> part.shared();
            default -> part.prepare("clean it");
        }
    }

    private static void joint(ASheet sheet, Random random, int index, int parts, String one, String other) {
        JointKind[] kinds = JointKind.values();
        AJoint joint = sheet.joint("j" + index, kinds[random.nextInt(kinds.length)], one, other)
                .hex(10 + random.nextInt(4))
                .count(1 + random.nextInt(5))
                .minutes("1.0" + random.nextInt(9), "0." + (1 + random.nextInt(9)) + "77");
        if (oneIn(2, random)) {
            joint.torque(50);
        }
        if (oneIn(3, random)) {
            joint.critical();
        }
        if (oneIn(10, random)) {
            joint.spoils(one);
        }
        if (oneIn(4, random)) {
            joint.pivot();
        }
        if (oneIn(6, random)) {
            joint.tightenAfter("f3").brings("f3");
        } else if (oneIn(4, random)) {
            joint.brings("f" + random.nextInt(3));
        }
        order(joint, random, index, parts);
        aids(joint, random, parts);
        heights(joint, random, parts);
    }

    private static void order(AJoint joint, Random random, int index, int parts) {
        if (oneIn(3, random)) {
            joint.behind("p" + random.nextInt(parts));
        }
        if (oneIn(5, random)) {
            joint.behindOneOf("p" + random.nextInt(parts), "p" + random.nextInt(parts));
        }
        int earlier = Math.min(index, parts);
        if (earlier > 0 && oneIn(6, random)) {
            joint.aheadOf("j" + random.nextInt(earlier));
        }
        if (earlier > 0 && oneIn(8, random)) {
            String first = "j" + random.nextInt(earlier);
            joint.after(first);
            if (oneIn(2, random)) {
                joint.loosenBefore(first);
            }
        }
        if (oneIn(8, random)) {
            joint.at(Station.BENCH);
        }
    }

    private static void aids(AJoint joint, Random random, int parts) {
        if (oneIn(4, random)) {
            joint.letsGo("p" + random.nextInt(parts), AIDS.get(random.nextInt(AIDS.size())));
        }
        if (oneIn(8, random)) {
            joint.letsDown("p" + random.nextInt(parts), "jack");
        }
    }

    private static void heights(AJoint joint, Random random, int parts) {
        if (oneIn(6, random)) {
            joint.breakLoose();
        }
        if (oneIn(6, random)) {
            joint.reachOnWheels(random.nextBoolean() ? new String[0] : new String[] {"p" + random.nextInt(parts)});
        }
        switch (random.nextInt(8)) {
            case 0 -> joint.tighten(Height.ON_WHEELS);
            case 1 -> joint.tighten(Height.RIDE_HEIGHT);
            case 2, 3 -> joint.height(Height.ANY).at(Station.ENGINE_BAY);
            case 4 -> joint.height(Height.ON_WHEELS).at(Station.CABIN).tighten(Height.ON_WHEELS);
            default -> {}
        }
    }
}
