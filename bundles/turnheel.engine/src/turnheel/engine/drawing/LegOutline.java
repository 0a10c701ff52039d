package turnheel.engine.drawing;

import java.util.List;
import java.util.stream.DoubleStream;

/** Where the back and the front of the leg run. The heel's back is at x 0, the floor at y 0; up is below zero. */
record LegOutline(SockMeasures sock) {

    /** The calf is rounder behind than before: <em>common practice</em> in drawings, no measurement. */
    private static final double BEHIND = 0.7;

    /** The back of the leg, {@code above} mm of knitting above the heel. */
    Point back(double above) {
        return new Point(-BEHIND * widening(above), -sock.heelHeight() - above);
    }

    /**
     * The front of the leg on the same round. Just above the heel the front lies higher than the back, on the bend of
     * the ankle; the rounds become level as the leg rises.
     */
    Point front(double above) {
        double height = Math.max(sock.heelHeight() + above, sock.footWidth() + above / 2);
        return new Point(sock.legWidth() + (1 - BEHIND) * widening(above), -height);
    }

    /** By how much the leg is wider than above the heel. */
    private double widening(double above) {
        double narrowFrom = narrowFrom();
        if (above < sock.widenOver()) {
            return above / sock.widenOver() * (sock.calfWidth() - sock.legWidth());
        }
        double narrowed = above <= narrowFrom || sock.narrowOver() == 0 ? 0
                : Math.min(1, (above - narrowFrom) / sock.narrowOver());
        return sock.calfWidth() - sock.legWidth() - narrowed * (sock.calfWidth() - sock.legTopWidth());
    }

    private double narrowFrom() {
        return sock.legOnly() - sock.narrowOver();
    }

    double top() {
        return sock.legOnly() + sock.cuffHeight();
    }

    /** Heights above the heel at which back or front may change their course, upwards. */
    List<Double> bends() {
        double level = Math.max(0, 2 * (sock.footWidth() - sock.heelHeight()));
        return DoubleStream.of(0, level, sock.widenOver(), narrowFrom(), sock.legOnly(), top())
                .filter(height -> height >= 0 && height <= top()).sorted().distinct().boxed().toList();
    }
}
