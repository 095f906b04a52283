package thalweg.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class AppExceptionTest {

    @Test
    void theSentenceIsWhatAPersonReadsAndTheCauseIsKeptForTheLog() {
        IOException cause = new IOException("EACCES");

        assertThat(new StoreException(Sentence.of("Say this."), cause).sentence())
                .isEqualTo("Say this.");
        assertThat(new InputException(Sentence.of("Say that."), cause)).hasCause(cause);
        assertThat(new ChangedMeanwhileException(Sentence.of("Repeat it.")).sentence())
                .isEqualTo("Repeat it.");
    }
}
