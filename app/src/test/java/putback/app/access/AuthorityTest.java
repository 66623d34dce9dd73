package putback.app.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuthorityTest {
    private static final List<String> NAMES = List.of("workshop.local", "192.168.7.20", "localhost");

    @TempDir
    Path folder;

    private Identity identity(List<String> names, Clock clock) throws AccessFault {
        return Authority.identity(folder.resolve("keys"), names, clock);
    }

    private static X509Certificate server(Identity identity) throws Exception {
        return (X509Certificate) identity.keys().getCertificate("putback");
    }

    @Test
    void theServersCertificate_isSignedByTheAuthority_forItsNamesAlone() throws Exception {
        Identity identity = identity(NAMES, Clock.systemUTC());
        X509Certificate server = server(identity);
        server.verify(identity.authority().getPublicKey());
        assertThat(server.getSubjectAlternativeNames())
                .extracting(name -> String.valueOf(name.get(1)))
                .containsExactlyInAnyOrderElementsOf(NAMES);
        assertThat(server.getBasicConstraints()).isEqualTo(-1);
        assertThat(identity.authority().getBasicConstraints()).isZero();
        assertThat(Duration.between(
                        server.getNotBefore().toInstant(), server.getNotAfter().toInstant()))
                .isLessThan(Duration.ofDays(825));
        assertThat(identity.fingerprint()).matches("([0-9A-F]{2}:){31}[0-9A-F]{2}");
    }

    @Test
    void theAuthority_isKept_andTheCertificateIsMadeAnewForOtherNamesAndInTime() throws Exception {
        Identity first = identity(NAMES, Clock.systemUTC());
        assertThat(server(identity(NAMES, Clock.systemUTC()))).isEqualTo(server(first));
        Identity moved = identity(List.of("localhost"), Clock.systemUTC());
        assertThat(moved.fingerprint()).isEqualTo(first.fingerprint());
        assertThat(server(moved)).isNotEqualTo(server(first));
        Clock later = Clock.offset(Clock.systemUTC(), Duration.ofDays(370));
        assertThat(server(identity(List.of("localhost"), later))).isNotEqualTo(server(moved));
    }

    @Test
    void keys_areReadableByTheirOwnerAlone() throws Exception {
        identity(NAMES, Clock.systemUTC());
        Path keys = folder.resolve("keys");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(keys)))
                .isEqualTo("rwx------");
        try (Stream<Path> files = Files.list(keys)) {
            assertThat(files.toList()).hasSize(2).allSatisfy(file -> assertThat(
                            PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------"));
        }
    }

    @Test
    void brokenKeys_areSaid_withWhatToDo() throws Exception {
        Files.createDirectories(folder.resolve("keys"));
        Files.writeString(folder.resolve("keys").resolve("authority.p12"), "not keys");
        assertThatThrownBy(() -> identity(NAMES, Clock.systemUTC()))
                .isInstanceOf(AccessFault.class)
                .hasMessageContaining("Maybe move that folder away");
    }
}
