package io.github.weirwise.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.unit.Weir;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Limits of what people enter: each stands once, names a member of its record, and can be told in the reader's units. */
class LimitsTest {
    private static final PhraseBook INCHES = new PhraseBook(Locale.ENGLISH, UnitSystem.US_CUSTOMARY);

    /** Records with a limit of a function's argument. */
    private static final List<String> OF_ARGUMENTS = List.of("TankPlan", "CareCalendar");

    private static List<Field> limits() throws ClassNotFoundException {
        List<Field> found = new ArrayList<>();
        for (JavaClass type : Library.classes()) {
            for (Field field : Class.forName(type.getName(), false, LimitsTest.class.getClassLoader())
                    .getDeclaredFields()) {
                if (field.getType() == Limit.class && Modifier.isStatic(field.getModifiers())) {
                    field.setAccessible(true);
                    found.add(field);
                }
            }
        }
        return found;
    }

    @Test
    void everyLimitNamesAMemberAndSaysWhatToTry() throws ReflectiveOperationException {
        List<String> wrong = new ArrayList<>();
        for (Field field : limits()) {
            Limit limit = (Limit) field.get(null);
            RecordComponent[] members = field.getDeclaringClass().getRecordComponents();
            boolean named = members == null
                    || OF_ARGUMENTS.contains(field.getDeclaringClass().getSimpleName())
                    || Arrays.stream(members).anyMatch(each -> each.getName().equals(limit.name()));
            boolean told = !PhraseBook.ENGLISH_METRIC.say(limit.tryThis()).isBlank();
            if (!named || !told) {
                wrong.add(field.getDeclaringClass() + "." + field.getName());
            }
        }
        assertThat(limits()).hasSizeGreaterThan(150);
        assertThat(wrong).isEmpty();
    }

    @Test
    void aReaderOfInchesIsToldInches() {
        assertThatThrownBy(() -> new Weir(5, 100, 100, 200)).isInstanceOfSatisfying(OutOfRangeException.class, e -> {
            assertThat(INCHES.say(e.problem())).isEqualTo("widthMm is 0.1969 in, must be 0.3938 to 78.74 in");
            assertThat(e)
                    .hasMessage(
                            "widthMm is 5 mm, must be 10 to 2000 mm; measure the weir again, heights from the chamber floor");
        });
    }
}
