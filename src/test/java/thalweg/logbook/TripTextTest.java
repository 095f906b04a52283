package thalweg.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.fault.InputException;
import thalweg.testing.RandomRecords;
import thalweg.units.Length;
import thalweg.units.Mass;
import thalweg.units.UnitSystem;

final class TripTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            Ana                       | Ana        |      |
            Ana, lead                 | Ana        | LEAD |
            Ana, lead, 62 kg          | Ana        | LEAD | 62
            Ana,62kg,Lead             | Ana        | LEAD | 62
            Ana; 62,5 kg              | Ana        |      | 62.5
            Ana Maria, 100 lb, able   | Ana Maria  | ABLE | 45.359
            "Kovač, Ana", beginner    | Kovač, Ana | BEGINNER |
            "the ""fast"" one"        | the "fast" one | |
            滝                        | 滝         |      |
            """)
    void aPersonIsReadAsTyped(String line, String name, Trip.Role role, Double kilograms) {
        Trip.Person person = TripText.person(line);

        assertThat(person.name()).isEqualTo(name);
        assertThat(person.role()).isEqualTo(Optional.ofNullable(role));
        assertThat(person.weight().map(Mass::kilograms)).isEqualTo(Optional.ofNullable(kilograms));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            Ana, boss             | "boss" is neither a role (beginner, able, lead) nor a weight
            Ana, 62               | The weight "62" has no unit; write 62 kg or 62 lb.
            Ana, 5 g              | The weight "5 g" is not between 10 and 300 kg.
            Ana, 5 kg             | is not between 10 and 300 kg
            Ana, 301 kg           | is not between 10 and 300 kg
            Ana, 0 kg             | is not between 10 and 300 kg
            Ana, -62 kg           | "-62 kg" is neither a role
            Ana, 62 stone         | The mass "62 stone" is not a number with a unit
            Ana, 60 kg, 62 kg     | has two weights
            Ana, lead, able       | has two roles
            , lead                | has no name
            Ana,                  | "" is neither a role
            Ana2,62 kg            | it is not clear where the name ends
            "Ana                  | it is not clear where the name ends
            """)
    void whatIsNoPersonIsNamed(String line, String sentence) {
        assertThatThrownBy(() -> TripText.person(line))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(sentence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            60 m, 9.5 mm low-stretch, dry | 6000 | 9.5 mm low-stretch, dry
            60                            | 6000 | ``
            45,5 m;static                 | 4550 | static
            200 ft, 8 mm                  | 6096 | 8 mm
            """)
    void aRopeIsReadAsTyped(String line, long centimetres, String kind) {
        assertThat(TripText.rope(line)).isEqualTo(new Trip.Rope(Length.centimetres(centimetres), kind));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 m", "0.5 m", "-60 m", "1001 m"})
    void aRopeThatNobodyCarriesIsRefused(String line) {
        assertThatThrownBy(() -> TripText.rope(line))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("is not between 1 and 1000 m long");
    }

    @ParameterizedTest
    @CsvSource({"0:00,0", "8:30,510", "08:30,510", "23:59,1439", "8h30,510", "8:30 am,510", "12:05 AM,5", "1:15pm,795"})
    void aTimeOfDayIsReadAsTyped(String text, int minutes) {
        assertThat(TripText.time(text)).isEqualTo(minutes);
        assertThat(TripText.time(TripText.printTime(minutes))).isEqualTo(minutes);
    }

    @ParameterizedTest
    @ValueSource(strings = {"25:00", "24:00", "8:60", "8", "830", "13:00 pm", "0:30 am", "-1:30", "8:5", "soon"})
    void aTimeThatDoesNotExistIsRefused(String text) {
        assertThatThrownBy(() -> TripText.time(text))
                .isInstanceOf(InputException.class)
                .hasMessage("The time \"" + text + "\" does not exist; write hours and minutes, from 0:00 to 23:59.");
    }

    @Test
    void theLineAtFaultIsNamedByItsNumber() {
        assertThatThrownBy(() -> TripText.lines("Ana, lead\n\nBo, 62", TripText::person))
                .isInstanceOf(InputException.class)
                .hasMessage("Line 3: The weight \"62\" has no unit; write 62 kg or 62 lb.");
        assertThat(TripText.lines("\n 60 m \n\n", TripText::rope))
                .isEqualTo(List.of(new Trip.Rope(Length.centimetres(6000), "")));
    }

    @Test
    void whatIsPrintedIsReadAsTheSame() {
        for (int seed = 0; seed < 300; seed++) {
            RandomRecords random = new RandomRecords(seed, RandomRecords.Fill.SOMETHING);
            Trip trip = random.things().trip(random.uid(), random.uid());
            for (Trip.Person person : trip.people()) {
                Trip.Person whole = new Trip.Person(
                        person.name(),
                        person.role(),
                        person.weight().map(weight -> new Mass(Math.round(weight.kilograms()))));
                assertThat(TripText.person(TripText.print(whole, UnitSystem.METRIC)))
                        .isEqualTo(whole);
            }
            for (Trip.Rope rope : trip.ropes()) {
                Trip.Rope whole = new Trip.Rope(
                        new Length(Math.max(1, Math.round(rope.length().metres()))), rope.kind());
                assertThat(TripText.rope(TripText.print(whole, UnitSystem.METRIC)))
                        .isEqualTo(whole);
            }
        }
    }
}
