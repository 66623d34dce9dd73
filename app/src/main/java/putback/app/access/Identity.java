package putback.app.access;

import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.util.HexFormat;
import java.util.Locale;

/**
 * By what this server proves which one it is.
 *
 * @param keys its key and certificate, under {@link #PASSWORD}
 * @param authority the certificate that phones are to trust
 */
public record Identity(KeyStore keys, X509Certificate authority) {
    /** Guards nothing: the file's permissions do. The format wants one. */
    public static final String PASSWORD = "putback";

    /** The public part, as phones read it. */
    public byte[] certificate() {
        try {
            return authority.getEncoded();
        } catch (CertificateEncodingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** SHA-256 of the authority's certificate, in pairs, as phones show it. */
    public String fingerprint() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(certificate());
            return HexFormat.ofDelimiter(":").formatHex(digest).toUpperCase(Locale.ROOT);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
