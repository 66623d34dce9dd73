package putback.angles.adjusting;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ProgrammeTest {
    /** Two cams of whole marks that have to meet 2.5 together, so that at least one of them is rounded. */
    private static Programme cams() {
        Programme programme = new Programme(2);
        programme.bound(0, -3, 3, true);
        programme.bound(1, -3, 3, true);
        programme.leastSquare(new double[] {1, 1}, -2.5, 1);
        programme.leastSquare(new double[] {1, -1}, 0, 0.1);
        return programme;
    }

    @Test
    void roundings_areTriedToTheEnd_andThatIsSaid() {
        Programme programme = cams();
        double[] best = programme.best();
        assertThat(best).isNotNull();
        assertThat(best[0] + best[1]).isBetween(2.0, 3.0);
        assertThat(programme.triedAll()).isTrue();
    }

    @Test
    void triesThatEndBeforeTheRoundings_areNotCalledTheBest() {
        Programme programme = cams();
        programme.best(1);
        assertThat(programme.triedAll()).isFalse();
    }
}
