package putback.app.access;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PasswordsTest {
    @Test
    void aPassword_fitsItsHash_andNothingElseDoes() {
        String kept = Passwords.hash("Räder und Schrauben");
        assertThat(kept).startsWith("$argon2id$v=19$m=19456,t=2,p=1$").doesNotContain("Räder");
        assertThat(Passwords.fits(kept, "Räder und Schrauben")).isTrue();
        assertThat(Passwords.fits(kept, "Räder und schrauben")).isFalse();
        assertThat(Passwords.fits(kept, "")).isFalse();
        assertThat(Passwords.fits("", "nobody")).isFalse();
        assertThat(Passwords.fits("Räder und Schrauben", "Räder und Schrauben")).isFalse();
        assertThat(Passwords.fits(kept, "a".repeat(100_000))).isFalse();
    }

    @Test
    void theSamePassword_isKeptDifferentlyEachTime() {
        assertThat(Passwords.hash("four wheels")).isNotEqualTo(Passwords.hash("four wheels"));
    }

    @Test
    void aShortPassword_isRefusedWithItsLength() {
        assertThat(Passwords.fault("1234567")).contains("has 7 characters", "8 at least");
        assertThat(Passwords.fault("12345678")).isEmpty();
        assertThat(Passwords.fault("a".repeat(1001))).contains("1001");
    }
}
