package laminate.file;

import static laminate.file.Reading.choice;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.id;
import static laminate.file.Scalars.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class FieldsTest {

    private final Complaints complaints = new Complaints();

    private <T> Optional<T> read(String text, Reading<T> reading) {
        return YamlTree.read("t.yaml", text, Keys.TRIM, complaints).flatMap(node -> reading.read(node, complaints));
    }

    private List<String> messages() {
        try {
            complaints.settle(Optional.of(""));
            return List.of();
        } catch (InputException e) {
            return e.complaints().stream().map(Complaint::toString).toList();
        }
    }

    private static <T> T kept(Fields in, Promise<T> promise) {
        in.requireSound();
        return promise.get();
    }

    @Test
    void askingForAnUndeclaredKeyIsAnErrorOfTheProgram() {
        Reading<String> reading = mapping(Keys.TRIM, in -> kept(in, in.required("length", text())));
        assertThatIllegalStateException()
                .isThrownBy(() -> read("edge: 1 m\n", reading))
                .withMessage("the key length is not declared in TRIM");
    }

    @Test
    void declaredKeyThatIsNotReadIsAnErrorOfTheProgram() {
        Reading<String> reading = mapping(Keys.TRIM, in -> kept(in, in.required("edge", text())));
        assertThat(read("edge: 1 m\n", reading)).contains("1 m");
        assertThatIllegalStateException()
                .isThrownBy(() -> read("edge: 1 m\nwidth: 1 m\n", reading))
                .withMessage("the key width of TRIM is declared but not read");
        assertThat(read("edge: 1 m\nwidth: 1 m\n", mapping(Keys.TRIM, in -> {
                    in.known("width");
                    return kept(in, in.required("edge", text()));
                })))
                .contains("1 m");
    }

    @Test
    void nothingIsMadeUnlessEveryFieldIsSound() {
        AtomicInteger made = new AtomicInteger();
        Reading<Integer> reading = mapping(Keys.TRIM, in -> {
            in.optional("edge", id());
            in.required("width", text());
            in.requireSound();
            return made.incrementAndGet();
        });
        List.of("edge: B\nwidth: 1\n", "edge: b\n", "edge: b\nwidth: 1\nheight: 2\n", "edge:\nwidth: 1\n", "[edge]\n")
                .forEach(text -> assertThat(read(text, reading)).isEmpty());
        assertThat(made).hasValue(0);
        assertThat(messages()).hasSize(5);
        assertThat(read("edge: b\nwidth: 1\n", reading)).contains(1);
    }

    @Test
    void valueThatCouldNotBeReadIsNeverHandedOut() {
        AtomicInteger asked = new AtomicInteger();
        Reading<String> early = mapping(Keys.TRIM, in -> {
            Promise<String> edge = in.required("edge", text());
            assertThatIllegalStateException().isThrownBy(edge::get);
            asked.incrementAndGet();
            return kept(in, edge);
        });
        assertThat(read("width: 1 m\n", early)).isEmpty();
        assertThat(asked).hasValue(1);
    }

    @Test
    void wholeThatIsMadeBeforeAllIsKnownToBeSoundIsDropped() {
        assertThat(read(
                        "edge: a\nheight: b\n",
                        mapping(Keys.TRIM, in -> in.required("edge", text()).get())))
                .isEmpty();
        assertThatIllegalStateException()
                .isThrownBy(() -> read(
                        "edge: a\nwidth: b\n",
                        mapping(Keys.TRIM, in -> in.required("edge", text()).get())))
                .withMessage("the key width of TRIM is declared but not read");
    }

    @Test
    void exactlyOneOfSeveralKeysIsRead() {
        Reading<String> reading = mapping(
                Keys.TRIM,
                in -> kept(
                        in,
                        in.exactlyOne(List.of(
                                choice("edge", text()), choice("width", text().map(width -> width + " wide"))))));
        assertThat(read("edge: a\n", reading)).contains("a");
        assertThat(read("width: a\n", reading)).contains("a wide");
        assertThat(read("{}\n", reading)).isEmpty();
        assertThat(read("edge: a\nwidth: b\n", reading)).isEmpty();
        assertThat(messages())
                .containsExactly(
                        "t.yaml:1:1: this trim has none of edge, width; exactly one of them is wanted",
                        "t.yaml:2:1: edge and width stand together; only one of them is accepted");
    }

    @Test
    void wordChoosesTheReading() {
        Reading<String> reading = Reading.byWord(
                "edge",
                List.of(
                        choice("straight", mapping(Keys.TRIM, in -> {
                            in.known("edge");
                            return kept(in, in.required("width", text()));
                        })),
                        choice("curved", mapping(Keys.TRIM, in -> kept(in, in.required("edge", text()))))));
        assertThat(read("edge: straight\nwidth: a\n", reading)).contains("a");
        assertThat(read("edge: curved\n", reading)).contains("curved");
        assertThat(read("edge: curvd\n", reading)).isEmpty();
        assertThat(read("width: a\n", reading)).isEmpty();
        assertThat(messages())
                .containsExactly(
                        "t.yaml:1:1: edge is missing; add edge: with one of straight, curved",
                        "t.yaml:1:7: edge: 'curvd' is not known; did you mean curved? accepted: straight, curved");
    }

    @Test
    void complaintsComeSortedAndOnceEach() {
        complaints.at(new Position("b.yaml", 1, 1), "third; x");
        complaints.at(new Position("a.yaml", 10, 1), "second; x");
        complaints.at(new Position("a.yaml", 9, 20), "first; x");
        complaints.at(new Position("a.yaml", 9, 20), "first; x");
        assertThat(messages())
                .containsExactly("a.yaml:9:20: first; x", "a.yaml:10:1: second; x", "b.yaml:1:1: third; x");
    }

    @Test
    void everyKindOfMappingHasKeysOfOneSpelling() {
        for (Keys keys : Keys.values()) {
            assertThat(keys.names()).isNotEmpty().allMatch(name -> name.matches("[a-zA-Z0-9]+(-[a-z]+)*"));
        }
    }
}
