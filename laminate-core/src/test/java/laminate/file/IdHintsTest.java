package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IdHintsTest {
    private static final List<String> IDS = List.of(
            "mat-300",
            "mat-450",
            "gelcoat-ortho",
            "plywood-birch",
            "plywood-okoume",
            "polyester-iso",
            "polyester-low-styrene",
            "polyester-ortho",
            "polyester-ortho-infusion",
            "roving-600");

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "mat-30            | did you mean mat-300?",
                "Mat-450           | did you mean mat-450?",
                "MAT 450           | did you mean mat-450?",
                "mat_450           | did you mean mat-450?",
                "“mat-300”         | did you mean mat-300?",
                "CSM 300           | did you mean mat-300?",
                "csm-450           | did you mean mat-450?",
                "WR 600            | did you mean roving-600?",
                "plywood           | did you mean plywood-birch or plywood-okoume?",
                "ortho             | did you mean polyester-ortho or polyester-ortho-infusion?",
                "polyester         | did you mean polyester-iso or polyester-low-styrene or polyester-ortho?",
                "2 x mat-450       | write how often beside it, as in {reinforcement: mat-450, times: 2};",
                "3×CSM 300         | write how often beside it, as in {reinforcement: mat-300, times: 3};",
                "2x something      | write how often beside it, as in {reinforcement: mat-300, times: 2};",
                "1.5 %             | an amount stands beside its id, as in {id: mekp, amount: 1.5 %};",
                "15 ml/kg          | an amount stands beside its id, as in {id: mekp, amount: 15 ml/kg};",
                "walnut            | ''",
            })
    void hintsAtWhatWasMeant(String text, String hint) {
        assertThat(new IdHints(IDS, id -> !id.startsWith("gelcoat")).of(text).strip())
                .isEqualTo(hint);
    }
}
