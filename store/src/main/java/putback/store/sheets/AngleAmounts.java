package putback.store.sheets;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import putback.angles.readings.ToeMillimetres;
import putback.quantity.Angle;
import putback.quantity.Length;
import putback.quantity.Parsed;
import putback.quantity.PlainNumber;
import putback.store.sheets.Node.Text;

/**
 * Angles of wheels; a toe may be a distance as well.
 *
 * @param toeReadAtMm diameter at which such a distance is meant; null where it is not given
 */
record AngleAmounts(@Nullable Double toeReadAtMm) {
    /** In degrees; null, with the fault told, where there is none. */
    @Nullable
    Double angle(Fields fields, String key, double most) {
        Text text = fields.single(key);
        return text == null ? null : angle(fields, key, text, most);
    }

    @Nullable
    Double angle(Fields fields, String key, Text text, double most) {
        Parsed<Angle> parsed = Angle.parse(text.text());
        boolean possible = parsed instanceof Parsed.Value<Angle> angle
                && Math.abs(angle.value().degrees()) <= most;
        Angle angle = fields.told(
                text,
                key,
                parsed,
                possible,
                "no wheel stands so; it may be from -" + whole(most) + " to " + whole(most));
        return angle == null ? null : angle.degrees();
    }

    private static String whole(double degrees) {
        return Math.round(degrees) + " deg";
    }

    /**
     * A toe in degrees, or in mm or inches at the diameter that the file states.
     *
     * @param total whether it is of both wheels together
     */
    @Nullable
    Double toe(Fields fields, String key, Text text, double most, boolean total) {
        if (PlainNumber.parse(text.text()) instanceof Parsed.Value<BigDecimal>) {
            fields.fault(
                    text.place(),
                    key,
                    "\"" + text.text() + "\" has no unit; write a toe as 0.10 deg, as 0°06' or as 1.2 mm");
            return null;
        }
        if (!(Length.parse(text.text()) instanceof Parsed.Value<Length> length)) {
            return angle(fields, key, text, most);
        }
        if (toeReadAtMm == null) {
            fields.fault(
                    text.place(),
                    key,
                    "a toe in mm needs the diameter at which it is measured: add toe-read-at, such as 406.4 mm for a"
                            + " 16 in rim");
            return null;
        }
        double millimetres = length.value().millimetres();
        double degrees = total
                ? ToeMillimetres.totalDegrees(millimetres, toeReadAtMm)
                : ToeMillimetres.degrees(millimetres, toeReadAtMm);
        if (Math.abs(degrees) <= most) {
            return degrees;
        }
        fields.fault(
                text.place(),
                key,
                length.value().text() + " is more than any wheel is toed at a diameter of "
                        + new Length(toeReadAtMm).text());
        return null;
    }
}
