package turnheel.cli;

/** Colours on a terminal that has them; elsewhere the words stand alone, which is all that they need. */
enum Paint {
    PLAIN, TERMINAL;

    private static final String ESCAPE = "\u001B[";

    /** What a piece of text is. */
    enum Tone {
        ERROR("1;31"), WARNING("1;33"), SPAN("1");

        private final String code;

        Tone(String code) {
            this.code = code;
        }
    }

    /**
     * For the standard output of this process: no colours where it goes to a file, or where somebody wants none
     * ({@code NO_COLOR}).
     */
    static Paint ofThisProcess() {
        String none = System.getenv("NO_COLOR");
        return Terminal.isConsole() && (none == null || none.isEmpty()) ? TERMINAL : PLAIN;
    }

    String of(Tone tone, String text) {
        return switch (this) {
            case PLAIN -> text;
            case TERMINAL -> ESCAPE + tone.code + "m" + text + ESCAPE + "0m";
        };
    }
}
