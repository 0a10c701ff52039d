package turnheel.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether a person looks on. */
final class Terminal {

    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    private Terminal() {
    }

    /**
     * Whether standard error goes to a terminal. The platform cannot say so of one stream; where the system can, it is
     * asked, elsewhere a terminal for input and output is taken to be one for errors too.
     */
    static boolean takesErrors() {
        if (Files.isSymbolicLink(STANDARD_ERROR)) {
            try {
                String device = Files.readSymbolicLink(STANDARD_ERROR).toString();
                return device.startsWith("/dev/pts/") || device.startsWith("/dev/tty");
            } catch (IOException unknown) {
                return false;
            }
        }
        return isConsole();
    }

    /** Whether standard input and output go to a terminal. */
    static boolean isConsole() {
        return System.console() != null && isTerminal();
    }

    /** Later platforms have a console without a terminal too. */
    private static boolean isTerminal() {
        try {
            return (boolean) java.io.Console.class.getMethod("isTerminal").invoke(System.console());
        } catch (ReflectiveOperationException olderPlatform) {
            return true;
        }
    }
}
