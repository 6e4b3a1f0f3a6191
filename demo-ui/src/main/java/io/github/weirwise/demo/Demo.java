package io.github.weirwise.demo;

/** Starts the demo. */
public final class Demo {
    private Demo() {}

    public static void main(String[] args) {
        System.out.println("Weirwise");
    }
}
