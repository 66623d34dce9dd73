package putback.app.cli;

import java.time.LocalDate;
import putback.app.papers.HouseStyle;
import putback.app.papers.JobHead;
import putback.app.papers.PaperSize;
import putback.quantity.Shown;

/** The options that say how something comes on paper. What makes papers is loaded only when one is asked for. */
final class PaperOptions {
    static final Option PDF = Option.value("--pdf", "FILE", "on paper, as a PDF file");
    static final Option PAPER = Option.value("--paper", "a4|letter", "size of the paper; a4 if not said");

    private PaperOptions() {}

    /** How figures are written, on the paper asked for; A4 if nothing is said. */
    static HouseStyle style(String command, Arguments arguments) throws UsageFault {
        String size = arguments.value("--paper").orElse("a4");
        return switch (size) {
            case "a4" -> HouseStyle.PLAIN;
            case "letter" -> HouseStyle.PLAIN.on(PaperSize.LETTER);
            case "roll" -> roll(command);
            default -> throw Renewing.fault(command, "--paper is a4 or letter, not \"" + Shown.text(size) + "\"");
        };
    }

    private static HouseStyle roll(String command) throws UsageFault {
        if (!command.equals(PapersCommand.NAME)) {
            throw Renewing.fault(command, "--paper roll is for labels: putback papers SHEET --kind labels");
        }
        return HouseStyle.PLAIN.on(PaperSize.ROLL);
    }

    /** The job's number and the day on the paper; blank, to be written by hand, if nothing is said. */
    static JobHead head(String command, Arguments arguments) throws UsageFault {
        LocalDate day = arguments.has("--on") ? ToolboxFile.on(command, arguments) : null;
        String number =
                command.equals(PapersCommand.NAME) ? arguments.value("--job").orElse("") : "";
        return JobHead.of(number, day);
    }

    /** Looks at the options for paper before the work is done, and says what is wrong with them. */
    static void check(String command, Arguments arguments) throws UsageFault {
        if (!arguments.has(PDF.name())) {
            if (arguments.has(PAPER.name())) {
                throw Renewing.fault(command, "--paper goes with --pdf FILE");
            }
            return;
        }
        String wrong = PdfFile.wrong(arguments.value("--pdf").orElse(""));
        if (!wrong.isEmpty()) {
            throw Renewing.fault(command, "--pdf FILE: " + wrong);
        }
        style(command, arguments);
        head(command, arguments);
    }
}
