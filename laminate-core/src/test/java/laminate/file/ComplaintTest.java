package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComplaintTest {

    private static final Complaint SECOND = new Complaint("lid.yaml", 2, 1, "what is wrong; what is accepted");
    private static final Complaint WHOLE = new Complaint("lid.yaml", 0, 0, "there is no such file");

    @ParameterizedTest
    @CsvSource({"' ', 1, 1, wrong", "lid.yaml, -1, 1, wrong", "lid.yaml, 1, -1, wrong", "lid.yaml, 1, 1, ' '"})
    void saysSomethingOfSomePlace(String file, int line, int column, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Complaint(file, line, column, message))
                .withMessage("not a complaint: " + file + ":" + line + ":" + column + ": " + message);
    }

    @Test
    void placeIsWrittenAsEditorsReadIt() {
        assertThat(SECOND).hasToString("lid.yaml:2:1: what is wrong; what is accepted");
        assertThat(WHOLE).hasToString("lid.yaml: there is no such file");
    }

    @Test
    void exceptionTellsEachComplaintOnceInOrder() {
        InputException thrown = new InputException(List.of(SECOND, WHOLE, SECOND));
        assertThat(thrown.complaints()).containsExactly(WHOLE, SECOND);
        assertThat(thrown).hasMessage(WHOLE + "\n" + SECOND);
        assertThatThrownBy(() -> thrown.complaints().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void exceptionHasSomethingToTell() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new InputException(List.of()))
                .withMessage("an input without complaints is not an exception");
    }

    @Test
    void exceptionKeepsItsMessageOnItsWayToAnotherProgram() throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(new InputException(List.of(SECOND)));
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            InputException arrived = (InputException) in.readObject();
            assertThat(arrived).hasMessage(SECOND.toString());
            assertThat(arrived.complaints()).isEmpty();
        }
    }
}
