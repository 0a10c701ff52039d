package turnheel.cli;

import java.nio.file.Path;

/** Pattern files to try commands on. */
final class Patterns {

    /** 225 mm less 10 % at 32 stitches over 10 cm: 64.8 stitches are wished for, 64 are taken. */
    static final String M = "M: foot-length=240mm foot-circumference=225mm ankle-circumference=215mm "
            + "heel-circumference=310mm leg-height=220mm";
    /** 250 mm: 72 wished for and taken. */
    static final String L = "L: foot-length=260mm foot-circumference=250mm ankle-circumference=235mm "
            + "heel-circumference=340mm leg-height=240mm";

    private Patterns() {
    }

    /** The sock of the worked examples, 64 and 72 stitches, with the usual choices. */
    static Path toeUp(Path folder) {
        return with(folder.resolve("gull.turnheel"));
    }

    /** The same from the cuff, with a wedge toe. */
    static Path cuffDown(Path folder) {
        return with(folder.resolve("tern.turnheel"), "--direction", "cuff-down", "--toe", "wedge");
    }

    /** Sizes M and L with options of one's own. */
    static Path with(Path file, String... options) {
        Object[] command = new Object[options.length + 6];
        System.arraycopy(new Object[] {"new", file, "--size", M, "--size", L}, 0, command, 0, 6);
        System.arraycopy(options, 0, command, 6, options.length);
        Run.of(command).clean();
        return file;
    }
}
