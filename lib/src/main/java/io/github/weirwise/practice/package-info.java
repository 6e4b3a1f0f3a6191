/**
 * Floor 7: practice on a virtual tank.
 *
 * <p>A {@link io.github.weirwise.practice.Scenario} (read by {@code json.ScenarioJson}, which also lists the built-in ones)
 * says what is hidden, told, offered and wanted. {@link io.github.weirwise.practice.PracticeSession} runs it on a virtual
 * clock: each {@link io.github.weirwise.practice.SessionStep} gives a new, immutable session. What happens in the tank is
 * floor 3's {@code TankSimulator}; what is seen goes into a floor-4 journal; the adviser of floor 6 is asked with that
 * journal alone.
 *
 * <pre>{@code
 * Scenario scenario = ScenarioJson.builtIn("first-steps");
 * PracticeSession session = PracticeSession.begin(scenario, SessionOptions.DEFAULT.withTrainee("A"));
 * session.messages();                                    // the briefing
 * session.questions();                                   // while one is open, the clock stands: answer it
 * session = session.perform(new SessionStep.Answer("why", 1, ""));
 * session = session.look(Look.ROUND);                    // minutes pass, the journal has a reading
 * Prediction expected = new Prediction(Trend.MORE, Trend.MORE, 1.5, 0.8);
 * session = session.act(new Act.MoveWeir(2), expected);  // say first, then act
 * session = session.runOn();                             // to the next message, question, settled foam or morning
 * session = session.ownView(FaultSheet.certain(Cause.WEIR_TOO_LOW), "wait");
 * session = session.perform(new SessionStep.OpenAdvice());
 * session.advice();                                      // open until the next act
 * Debrief debrief = Debrief.of(session);                 // any time, made for the end
 * }</pre>
 *
 * <p>A step that cannot be taken throws {@link io.github.weirwise.practice.RefusedStepException} with a phrase; a second change
 * while {@link io.github.weirwise.practice.PracticeSession#settlesAt()} lies ahead wants a reason and is then logged, not
 * barred. {@link io.github.weirwise.practice.PracticeSession#rewoundTo} and plain keeping of sessions give branches;
 * {@link io.github.weirwise.practice.PracticeSession#toRecord()} and
 * {@link io.github.weirwise.practice.PracticeSession#replay} give the same session bit for bit.
 */
package io.github.weirwise.practice;
