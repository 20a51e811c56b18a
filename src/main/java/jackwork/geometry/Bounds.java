package jackwork.geometry;

/** An upright rectangle, mm: the extent of something drawn. */
public record Bounds(double minX, double minY, double maxX, double maxY) {

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public Point centre() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }

    public Bounds union(Bounds other) {
        return new Bounds(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    /** From a point to the nearest of what is inside, at least, mm; 0 within. */
    public double distance(Point point) {
        double x = Math.max(0, Math.max(minX - point.x(), point.x() - maxX));
        double y = Math.max(0, Math.max(minY - point.y(), point.y() - maxY));
        return Math.sqrt(x * x + y * y);
    }

    /** Between what is inside one and what is inside another, at least, mm; 0 where they share a point. */
    public double distance(Bounds other) {
        double x = Math.max(0, Math.max(minX - other.maxX, other.minX - maxX));
        double y = Math.max(0, Math.max(minY - other.maxY, other.minY - maxY));
        return Math.sqrt(x * x + y * y);
    }
}
