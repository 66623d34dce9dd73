package putback.app.web.job;

/**
 * A customer's address, shown once.
 *
 * @param address whole, as it is sent
 * @param here whether it opens on this machine only, so that no customer can reach it
 */
public record LinkView(String job, String address, boolean here) {
    /**
     * The link below an origin.
     *
     * @param origin as the browser at the desk sees the garage, such as {@code https://garage.local:8443}
     */
    static LinkView of(String job, String origin, String path) {
        boolean here = origin.matches("https?://(localhost|127(\\.\\d+){3}|\\[::1])(:\\d+)?");
        return new LinkView(job, origin + path, here);
    }
}
