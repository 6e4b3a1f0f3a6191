package io.github.weirwise.json;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.concurrent.CancellationException;

/**
 * Documents as strings: a request in, an answer out, and each kind of document on its own. Stateless and thread-safe.
 *
 * <p>Every document is one JSON object (RFC 8259) with a member {@code version}, which may stand anywhere in it; {@code
 * docs/formats.md} lists the members and the JSON Schemas beside this package describe them. Every {@code read} method
 * throws {@link DocumentException} and nothing else when the text is not such a document.
 *
 * @since 0.1
 */
public final class WeirwiseJson {
    private static final Shapes SHAPES = new Shapes();
    private static final Document<Request> REQUEST = new Document<>(SHAPES.of(Request.class));
    /** Answers may hold what a later library added; it is passed over. */
    private static final Shapes ANSWERS = new Shapes(PhraseBook.ENGLISH_METRIC, false);

    private static final Document<Advice> ADVICE = new Document<>(ANSWERS.of(Advice.class));
    private static final Document<SkimmerUnit> UNIT = new Document<>(SHAPES.of(SkimmerUnit.class));
    private static final Document<Settings> SETTINGS = new Document<>(SHAPES.of(Settings.class));
    private static final Document<JournalDocument> JOURNAL = new Document<>(SHAPES.of(JournalDocument.class));
    private static final Document<OperatingPoint> POINT = new Document<>(ANSWERS.of(OperatingPoint.class));
    private static final Document<Installation> INSTALLATION = new Document<>(SHAPES.of(Installation.class));
    private static final Document<ErrorDocument> FAILURE = new Document<>(ANSWERS.of(ErrorDocument.class));

    private WeirwiseJson() {}

    /**
     * The answer to a request of the service ({@code docs/service.md}): the next step, or what its {@code operation} names.
     *
     * @param request a request document
     * @return an answer document on one line
     * @throws DocumentException if the request is not one, or describes something that cannot be computed
     * @throws CancellationException if the thread was interrupted
     */
    public static String answer(String request) {
        return new ServiceLine().answer(request);
    }

    /** The same, with an error document instead of an exception: what the {@link LineFilter} writes for a line. Never throws. */
    public static String reply(String request) {
        ServiceLine line = new ServiceLine();
        try {
            return line.answer(request);
        } catch (DocumentException e) {
            return line.error(e);
        } catch (CancellationException e) {
            return line.error(new DocumentException("$", Phrase.of("report.stopped"), Phrase.of("json.askAgain")));
        } catch (RuntimeException | StackOverflowError e) {
            // A fault of our own; whoever asks next still gets an answer.
            return line.error(new DocumentException(
                    "$",
                    Phrase.of("json.answerWasFound", Quote.plain(String.valueOf(e), 200)),
                    Phrase.of("json.reportThisLine")));
        }
    }

    /** Reads a request: unit (whole or by name), settings at the start of the journal, journal, now. */
    public static Request readRequest(String document) {
        return REQUEST.read(document);
    }

    /** Writes a request. */
    public static String writeRequest(Request request) {
        return REQUEST.write(request);
    }

    /** Reads an answer. */
    public static Advice readAdvice(String document) {
        return ADVICE.read(document);
    }

    /** Writes an answer; every sentence comes as key, typed values and English words. */
    public static String writeAdvice(Advice advice) {
        return ADVICE.write(advice);
    }

    /** Reads a unit. */
    public static SkimmerUnit readUnit(String document) {
        return UNIT.read(document);
    }

    /** Writes a unit. */
    public static String writeUnit(SkimmerUnit unit) {
        return UNIT.write(unit);
    }

    /** Reads settings. */
    public static Settings readSettings(String document) {
        return SETTINGS.read(document);
    }

    /** Writes settings. */
    public static String writeSettings(Settings settings) {
        return SETTINGS.write(settings);
    }

    /** Reads a journal: an object with {@code entries} in any order of time. */
    public static Journal readJournal(String document) {
        return JOURNAL.read(document).entries();
    }

    /** Writes a journal, oldest entry first. */
    public static String writeJournal(Journal journal) {
        return JOURNAL.write(new JournalDocument(journal));
    }

    /** Reads an operating point. */
    public static OperatingPoint readOperatingPoint(String document) {
        return POINT.read(document);
    }

    /** Writes an operating point. */
    public static String writeOperatingPoint(OperatingPoint point) {
        return POINT.write(point);
    }

    /** Reads an installation, as the fit check and the start-up plan take it. */
    @SuppressWarnings("exports")
    public static Installation readInstallation(String document) {
        return INSTALLATION.read(document);
    }

    /** Writes an installation. */
    @SuppressWarnings("exports")
    public static String writeInstallation(Installation installation) {
        return INSTALLATION.write(installation);
    }

    /** Writes what is wrong with a document as a document. */
    public static String writeError(DocumentException error) {
        return FAILURE.write(ErrorDocument.of(error));
    }

    /** Reads what {@link #writeError} wrote, for whoever gets it from another program. */
    public static DocumentException readError(String document) {
        ErrorDocument.Mistake mistake = FAILURE.read(document).error();
        return new DocumentException(
                mistake.path(),
                Phrase.of("report.words", mistake.problem()),
                Phrase.of("report.words", mistake.tryThis()));
    }
}
