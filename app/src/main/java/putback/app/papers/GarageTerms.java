package putback.app.papers;

import java.util.List;

/**
 * What laws in one place or another want on an estimate or an invoice. Whatever is not known is empty, and is then
 * printed as a line to write on: which of these are needed is for the garage to find out.
 *
 * @param complaint in the customer's own words
 * @param validUntil how long the estimate holds
 * @param estimateCharge what the estimate itself costs
 * @param teardown what taking apart costs if the customer then says no
 * @param reassembly what putting together again costs if the customer then says no
 * @param destroyed parts that taking apart destroys, whoever pays them
 * @param oldParts whether old parts are kept for the customer or left with the garage
 * @param warranty on parts and on labour, by time and distance
 * @param subcontractors who does what is not done here
 * @param storage what it costs when the car is not fetched
 * @param certificates numbers of the mechanics who work or check
 * @param complaintsTo where a complaint goes
 */
public record GarageTerms(
        String complaint,
        String validUntil,
        String estimateCharge,
        String teardown,
        String reassembly,
        String destroyed,
        String oldParts,
        String warranty,
        String subcontractors,
        String storage,
        String certificates,
        String complaintsTo) {
    /** Nothing known. */
    public static final GarageTerms BLANK = new GarageTerms("", "", "", "", "", "", "", "", "", "", "", "");

    static final String NO_ADVICE = "This form is not legal advice. Local law rules what has to be on it, how far it"
            + " binds, and what needs a fresh yes.";

    /** For an estimate. */
    Block.Fields beforeWork() {
        return new Block.Fields(List.of(
                new Block.Field("Complaint, in the customer's words", complaint),
                new Block.Field("This estimate holds until", validUntil),
                new Block.Field("Charge for this estimate", estimateCharge),
                new Block.Field("Charge for taking apart, if you then say no", teardown),
                new Block.Field("Charge for putting together again, if you then say no", reassembly),
                new Block.Field("Parts that taking apart destroys, and who pays them", destroyed),
                new Block.Field("Old parts: returned, kept to be seen, or left here", oldParts),
                new Block.Field("Warranty on parts and on labour, time and distance", warranty),
                new Block.Field("Work given to others, and to whom", subcontractors),
                new Block.Field("Storage, if the car is not fetched", storage),
                new Block.Field("Mechanic and checker, certificate numbers", certificates),
                new Block.Field("Complaints go to", complaintsTo)));
    }

    /** For an invoice. */
    Block.Fields afterWork() {
        return new Block.Fields(List.of(
                new Block.Field("Complaint, in the customer's words", complaint),
                new Block.Field("Warranty on parts and on labour, time and distance", warranty),
                new Block.Field("Old parts: returned, kept to be seen, or left here", oldParts),
                new Block.Field("Work given to others, and to whom", subcontractors),
                new Block.Field("Mechanic and checker, certificate numbers", certificates),
                new Block.Field("Complaints go to", complaintsTo)));
    }
}
