package thalweg.tui.lanterna;

import java.lang.reflect.Proxy;

/**
 * Notices that the terminal may have another size. Java has a way to hear the signal that says so, but not one that a
 * compiler accepts without a warning, so it is looked up by name; where there is none, everybody is told every second.
 */
final class Resizes {

    private static final long WITHOUT_SIGNAL = 1000;

    private Resizes() {}

    /** Has it told from now on, from another thread. */
    static void tell(Runnable told) {
        try {
            onSignal("WINCH", told);
        } catch (ReflectiveOperationException | IllegalArgumentException e) {
            everySecond(told);
        }
    }

    static void onSignal(String name, Runnable told) throws ReflectiveOperationException {
        Class<?> signal = Class.forName("sun.misc.Signal");
        Class<?> handler = Class.forName("sun.misc.SignalHandler");
        Object telling = Proxy.newProxyInstance(
                Resizes.class.getClassLoader(), new Class<?>[] {handler}, (proxy, method, arguments) -> {
                    if (method.getName().equals("handle")) {
                        told.run();
                    }
                    return null;
                });
        signal.getMethod("handle", signal, handler)
                .invoke(null, signal.getConstructor(String.class).newInstance(name), telling);
    }

    private static void everySecond(Runnable told) {
        Thread thread = new Thread(
                () -> {
                    try {
                        while (true) {
                            Thread.sleep(WITHOUT_SIGNAL);
                            told.run();
                        }
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                },
                "sizes");
        thread.setDaemon(true);
        thread.start();
    }
}
