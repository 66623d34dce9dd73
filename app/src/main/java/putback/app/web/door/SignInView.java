package putback.app.web.door;

/**
 * The page on which one signs in.
 *
 * @param code pairs this device; empty when it is only signed in
 * @param to the page that is shown then
 * @param said what went wrong, empty for nothing
 */
public record SignInView(String code, String to, String said) {}
