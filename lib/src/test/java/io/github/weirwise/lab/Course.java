package io.github.weirwise.lab;

/** What came, hour by hour: amounts over the wanted, floods, air off, parts fouled by more than half. */
final class Course {
    private final int firstHour;
    private final double[] sum;
    private final boolean[] flood;
    private final boolean[] airOff;
    private final byte[] fouled;

    Course(int firstHour, int lastHour) {
        this.firstHour = firstHour;
        int hours = lastHour - firstHour;
        sum = new double[hours + 1];
        flood = new boolean[hours];
        airOff = new boolean[hours];
        fouled = new byte[hours];
    }

    void note(int hour, double amount, boolean flooded, boolean off, int partsFouled) {
        int i = hour - firstHour;
        sum[i + 1] = sum[i] + amount;
        flood[i] = flooded;
        airOff[i] = off;
        fouled[i] = (byte) partsFouled;
    }

    /** Mean amount over the hours before one, as far as there are any. */
    double mean(int hour, int hours) {
        int to = hour - firstHour;
        int from = Math.max(0, to - hours);
        return to == from ? 0 : (sum[to] - sum[from]) / (to - from);
    }

    boolean flood(int hour) {
        return flood[hour - firstHour];
    }

    boolean airOff(int hour) {
        return airOff[hour - firstHour];
    }

    int fouled(int hour) {
        return fouled[hour - firstHour];
    }
}
