package turnheel.engine.drawing;

/** Where the back and the front of the leg run. The heel's back is at x 0, the floor at y 0; up is below zero. */
record LegOutline(SockMeasures sock) {

    /** The calf is rounder behind than before: <em>common practice</em> in drawings, no measurement. */
    private static final double BEHIND = 0.7;

    /** The back of the leg, {@code above} mm of knitting above the heel. */
    Point back(double above) {
        return new Point(-BEHIND * widening(above), -sock.heelHeight() - above);
    }

    /**
     * The front of the leg on the same round. Just above the heel the front lies higher than the back, on the bend of the
     * ankle; the rounds become level as the leg rises.
     */
    Point front(double above) {
        double height = Math.max(sock.heelHeight() + above, sock.footWidth() + above / 2);
        return new Point(sock.legWidth() + (1 - BEHIND) * widening(above), -height);
    }

    private double widening(double above) {
        double share = sock.widenOver() == 0 ? 0 : Math.min(1, above / sock.widenOver());
        return share * (sock.legTopWidth() - sock.legWidth());
    }

    double top() {
        return sock.legOnly() + sock.cuffHeight();
    }
}
