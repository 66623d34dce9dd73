package putback.app.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A cable between browsers and a server that can be cut: what is under way breaks off, nothing more comes through. A
 * browser's own pretended loss of network lets a page that is loaded again through.
 */
final class Cable implements AutoCloseable {
    private final int far;
    private final int near;
    private final Set<Socket> ends = ConcurrentHashMap.newKeySet();
    private volatile ServerSocket door;

    private Cable(int far) throws IOException {
        this.far = far;
        this.door = listen(0);
        this.near = door.getLocalPort();
    }

    /** A whole cable to a server on this machine. */
    static Cable to(int port) {
        try {
            return new Cable(port);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** What a browser calls in place of the server's own address. */
    String address() {
        return "http://127.0.0.1:" + near;
    }

    void cut() {
        try {
            door.close();
            for (Socket end : ends) {
                end.close();
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    void mend() {
        try {
            door = listen(near);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    @Override
    public void close() {
        cut();
    }

    private ServerSocket listen(int port) throws IOException {
        ServerSocket opened = new ServerSocket();
        opened.setReuseAddress(true);
        opened.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        start(() -> accept(opened));
        return opened;
    }

    private void accept(ServerSocket opened) {
        while (!opened.isClosed()) {
            try {
                Socket caller = opened.accept();
                Socket called = new Socket(InetAddress.getLoopbackAddress(), far);
                ends.add(caller);
                ends.add(called);
                if (opened.isClosed()) {
                    drop(caller, called);
                }
                start(() -> carry(caller, called));
                start(() -> carry(called, caller));
            } catch (IOException cut) {
                return;
            }
        }
    }

    private void carry(Socket from, Socket to) {
        try (InputStream in = from.getInputStream();
                OutputStream out = to.getOutputStream()) {
            in.transferTo(out);
        } catch (IOException cut) {
            // Whoever was at the other end is told below.
        } finally {
            drop(from, to);
        }
    }

    private void drop(Socket one, Socket other) {
        ends.remove(one);
        ends.remove(other);
        try {
            one.close();
            other.close();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "cable");
        thread.setDaemon(true);
        thread.start();
    }
}
