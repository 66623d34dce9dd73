package putback.app.web.door;

import java.util.List;
import putback.store.books.Device;

/**
 * Paired devices, and maybe a code for one more.
 *
 * @param address what the new device is to open; empty when no code was asked for
 * @param picture the same as a QR code
 * @param fingerprint of the authority that phones trust
 */
public record DeviceView(List<Device> devices, String address, String picture, String fingerprint) {}
