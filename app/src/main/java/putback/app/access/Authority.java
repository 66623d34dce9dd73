package putback.app.access;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Date;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** The garage's own authority: made once, and trusted once by each phone. It signs this server's certificate anew when its names change. */
public final class Authority {
    private static final String ALIAS = "putback";
    private static final Duration AUTHORITY_HOLDS = Duration.ofDays(3650);
    /** Within the 825 days that phones allow a certificate of an authority that was added by hand. */
    private static final Duration SERVER_HOLDS = Duration.ofDays(397);

    private static final Duration RENEWED_BEFORE = Duration.ofDays(30);
    private static final SecureRandom RANDOM = new SecureRandom();

    private final KeyFiles files;
    private final Clock clock;

    private Authority(KeyFiles files, Clock clock) {
        this.files = files;
        this.clock = clock;
    }

    /**
     * The server's key and certificate for its names, made where there are none that fit.
     *
     * @param folder where keys are kept, readable by their owner alone
     */
    public static Identity identity(Path folder, List<String> names, Clock clock) throws AccessFault {
        try {
            return new Authority(new KeyFiles(folder), clock).identity(names);
        } catch (IOException | GeneralSecurityException | OperatorException fault) {
            throw new AccessFault(
                    "the keys in " + folder + " cannot be used: " + fault.getMessage()
                            + ". Maybe move that folder away; new ones are made then, and phones have to trust them anew.",
                    fault);
        }
    }

    private Identity identity(List<String> names) throws IOException, GeneralSecurityException, OperatorException {
        KeyStore own = files.read("authority.p12");
        if (own == null) {
            KeyPair pair = pair();
            own = files.write("authority.p12", ALIAS, pair.getPrivate(), ownCertificate(pair));
        }
        X509Certificate authority = (X509Certificate) own.getCertificate(ALIAS);
        KeyStore server = files.read("server.p12");
        if (server == null || !fits((X509Certificate) server.getCertificate(ALIAS), authority, names)) {
            KeyPair pair = pair();
            Key key = own.getKey(ALIAS, Identity.PASSWORD.toCharArray());
            X509Certificate made = serverCertificate(pair.getPublic(), authority, (PrivateKey) key, names);
            server = files.write("server.p12", ALIAS, pair.getPrivate(), made, authority);
        }
        return new Identity(server, authority);
    }

    private boolean fits(X509Certificate server, X509Certificate authority, List<String> names)
            throws GeneralSecurityException {
        Set<String> has = new HashSet<>();
        Collection<List<?>> alternatives = server.getSubjectAlternativeNames();
        if (alternatives != null) {
            alternatives.forEach(name -> has.add(String.valueOf(name.get(1))));
        }
        Instant end = server.getNotAfter().toInstant();
        return has.equals(new HashSet<>(names))
                && server.getIssuerX500Principal().equals(authority.getSubjectX500Principal())
                && end.minus(RENEWED_BEFORE).isAfter(clock.instant());
    }

    private static KeyPair pair() throws GeneralSecurityException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"), RANDOM);
        return generator.generateKeyPair();
    }

    private X509v3CertificateBuilder begun(X500Name issuer, X500Name subject, PublicKey key, Duration holds) {
        Instant now = clock.instant();
        return new JcaX509v3CertificateBuilder(
                issuer,
                new BigInteger(127, RANDOM).add(BigInteger.ONE),
                Date.from(now.minus(Duration.ofDays(1))),
                Date.from(now.plus(holds)),
                subject,
                key);
    }

    private X509Certificate ownCertificate(KeyPair pair)
            throws IOException, GeneralSecurityException, OperatorException {
        byte[] mark = new byte[4];
        RANDOM.nextBytes(mark);
        X500Name name = new X500Name(
                "CN=Putback of this garage " + java.util.HexFormat.of().formatHex(mark));
        X509v3CertificateBuilder builder = begun(name, name, pair.getPublic(), AUTHORITY_HOLDS);
        builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
        builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
        builder.addExtension(
                Extension.subjectKeyIdentifier,
                false,
                new JcaX509ExtensionUtils().createSubjectKeyIdentifier(pair.getPublic()));
        return signed(builder, pair.getPrivate());
    }

    private X509Certificate serverCertificate(
            PublicKey key, X509Certificate authority, PrivateKey signs, List<String> names)
            throws IOException, GeneralSecurityException, OperatorException {
        X500Name issuer =
                X500Name.getInstance(authority.getSubjectX500Principal().getEncoded());
        X509v3CertificateBuilder builder = begun(issuer, new X500Name("CN=Putback"), key, SERVER_HOLDS);
        JcaX509ExtensionUtils extensions = new JcaX509ExtensionUtils();
        builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
        builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
        builder.addExtension(Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
        builder.addExtension(
                Extension.authorityKeyIdentifier,
                false,
                extensions.createAuthorityKeyIdentifier(authority.getPublicKey()));
        GeneralName[] alternatives = new GeneralName[names.size()];
        for (int i = 0; i < alternatives.length; i++) {
            String name = names.get(i);
            boolean isAddress = name.contains(":") || name.matches("[0-9.]+");
            alternatives[i] = new GeneralName(isAddress ? GeneralName.iPAddress : GeneralName.dNSName, name);
        }
        builder.addExtension(Extension.subjectAlternativeName, false, new GeneralNames(alternatives));
        return signed(builder, signs);
    }

    private static X509Certificate signed(X509v3CertificateBuilder builder, PrivateKey key)
            throws GeneralSecurityException, OperatorException {
        Certificate made = new JcaX509CertificateConverter()
                .getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(key)));
        return (X509Certificate) made;
    }
}
