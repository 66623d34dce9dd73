package putback.app.ladder;

/** Where things stand across the picture, in px. */
final class Columns {
    final boolean wide;
    final double width;
    final double edge;
    final double railLeft;
    final double railRight;
    /** Ends of step numbers on the left, starts on the right. */
    final double numberLeft;

    final double numberRight;
    final double bracketLeft;
    final double bracketRight;
    final double toolEnd;
    final double toolWidth;
    final double minutesLeft;
    final double firstUnit;
    final double secondUnit;
    final double minutesRight;
    final double labelWidth;
    /** From the rail to the nearest lane of the aids, and from lane to lane. */
    final double laneStart;

    final double laneGap;
    final int lanes;
    final double bankMost;
    final double bankUnit;
    final double nameSize;
    final double nameLine;
    final double titleSize;
    final double smallSize;
    final double smallLine;
    /** Free space between a rail and the text inside it. */
    final double pad;

    Columns(boolean wide) {
        this.wide = wide;
        width = wide ? 1280 : 390;
        edge = wide ? 28 : 14;
        railLeft = wide ? 420 : 65;
        railRight = wide ? 840 : 332;
        numberLeft = wide ? 374 : 40;
        numberRight = wide ? 890 : 368;
        bracketLeft = wide ? 134 : 17;
        bracketRight = wide ? 1156 : 0;
        labelWidth = wide ? 100 : 14;
        toolEnd = wide ? 302 : 0;
        toolWidth = wide ? 160 : 0;
        minutesLeft = wide ? 338 : 0;
        firstUnit = wide ? 1007 : 0;
        secondUnit = wide ? 1112 : 0;
        minutesRight = wide ? 1144 : 0;
        laneStart = wide ? 28 : 22;
        laneGap = wide ? 5 : 3.2;
        lanes = wide ? 4 : 3;
        bankMost = wide ? 120 : 40;
        bankUnit = wide ? 34 : 11;
        nameSize = wide ? 14.5 : 13.5;
        nameLine = wide ? 18 : 16;
        titleSize = wide ? 22 : 18;
        smallSize = 12.5;
        smallLine = 15;
        pad = wide ? 20 : 14;
    }

    double laneLeft(int lane) {
        return railLeft - (wide ? laneStart - 8 : laneStart - 7) - lane * laneGap;
    }

    double laneRight(int lane) {
        return railRight + laneStart + lane * laneGap;
    }

    double middle() {
        return (railLeft + railRight) / 2;
    }

    /** How far the ground reaches in at a depth, when the plan goes down to the deepest. */
    double bank(int depth, int deepest) {
        return deepest == 0 ? 0 : depth * Math.min(bankUnit, bankMost / deepest);
    }
}
