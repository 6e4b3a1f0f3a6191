package io.github.weirwise.demo;

import io.github.weirwise.unit.SteadyLaw;
import java.util.concurrent.atomic.LongAdder;
import net.bytebuddy.agent.ByteBuddyAgent;
import net.bytebuddy.agent.builder.AgentBuilder;
import net.bytebuddy.asm.Advice;
import net.bytebuddy.matcher.ElementMatchers;

/** Counts how often the steady law is worked out, by code woven into the class for the time of a test. */
public final class Evaluations {
    /** Where the woven code finds the counter: both know the system's properties, whatever loads them. */
    private static final String COUNTER = "weirwise.test.evaluations";

    private Evaluations() {}

    /** The evaluations while something is done. */
    public static long during(Runnable work) {
        LongAdder counter = new LongAdder();
        System.getProperties().put(COUNTER, counter);
        var transformer = new AgentBuilder.Default()
                .disableClassFormatChanges()
                .with(AgentBuilder.RedefinitionStrategy.RETRANSFORMATION)
                .type(ElementMatchers.is(SteadyLaw.class))
                .transform((builder, type, loader, module, domain) ->
                        builder.visit(Advice.to(Count.class).on(ElementMatchers.named("at"))))
                .installOn(ByteBuddyAgent.install());
        try {
            work.run();
        } finally {
            transformer.reset(ByteBuddyAgent.getInstrumentation(), AgentBuilder.RedefinitionStrategy.RETRANSFORMATION);
            System.getProperties().remove(COUNTER);
        }
        return counter.sum();
    }

    /** Woven in at the beginning of the method. */
    public static final class Count {
        private Count() {}

        @Advice.OnMethodEnter
        static void enter() {
            if (System.getProperties().get(COUNTER) instanceof LongAdder counter) {
                counter.increment();
            }
        }
    }
}
