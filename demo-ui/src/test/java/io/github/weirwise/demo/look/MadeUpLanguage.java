package io.github.weirwise.demo.look;

import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.ResourceBundle;

/**
 * A language that nobody speaks, made from the English texts: every letter gets a stroke or an accent. What still shows
 * plain letters did not come from a text. "qaa" is of the range that ISO 639-2 leaves to local use.
 */
public final class MadeUpLanguage {
    private static final Locale LOCALE = Locale.forLanguageTag("qaa");
    private static final String PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final String STRANGE =
            "\u00e0\u0180\u00e7\u0111\u00e9\u0192\u011f\u0125\u00ee\u0135\u0137\u0142\u0271"
                    + "\u00f1\u00f4\u00fe\u024b\u0159\u0161\u0163\u00fb\u028b\u0175\u04fd\u00fd\u017e"
                    + "\u00c0\u0181\u00c7\u0110\u00c9\u0191\u011e\u0124\u00ce\u0134\u0136\u0141\u2c6e"
                    + "\u00d1\u00d4\u00de\u024a\u0158\u0160\u0162\u00db\u01b2\u0174\u04fc\u00dd\u017d";
    private static final List<String> PACKAGES = List.of(
            "report",
            "unit",
            "reading",
            "tank",
            "setup",
            "diagnosis",
            "care",
            "advice",
            "practice",
            "watch",
            "json",
            "table",
            "sheet",
            "demo");

    private MadeUpLanguage() {}

    /** Writes its texts beside the compiled tests and gives the words that use them. */
    public static Words words() throws IOException, URISyntaxException {
        Path root = Path.of(MadeUpLanguage.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        for (String each : PACKAGES) {
            translate(root, "io/github/weirwise/" + each + "/texts");
        }
        ResourceBundle.clearCache(MadeUpLanguage.class.getClassLoader());
        return new Words(new PhraseBook(LOCALE, UnitSystem.METRIC));
    }

    private static void translate(Path root, String name) throws IOException {
        Properties english = new Properties();
        try (InputStream in = MadeUpLanguage.class.getClassLoader().getResourceAsStream(name + ".properties")) {
            if (in == null) {
                return;
            }
            english.load(in);
        }
        Properties strange = new Properties();
        english.forEach((key, text) -> strange.put(key, isDate((String) key) ? text : translated((String) text)));
        Path file = root.resolve(name + "_qaa.properties");
        Files.createDirectories(file.getParent());
        try (OutputStream out = Files.newOutputStream(file)) {
            strange.store(out, null);
        }
    }

    /** How dates are written is a pattern, whose letters mean years, days and hours. */
    private static boolean isDate(String key) {
        return key.matches("report\\.(clock|date|moment\\..*)");
    }

    /** The letter behind an ampersand is a key and stays as it is. */
    static String translated(String english) {
        StringBuilder text = new StringBuilder();
        char before = ' ';
        for (char letter : english.toCharArray()) {
            int at = PLAIN.indexOf(letter);
            text.append(at < 0 || before == '&' ? letter : STRANGE.charAt(at));
            before = letter;
        }
        return text.toString();
    }
}
