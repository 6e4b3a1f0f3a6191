package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.picture.WantedLevels;
import io.github.weirwise.practice.FreePlay;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.Settings;

/** The newest moment of a tank as a picture, worked out once however many ask for it. */
final class Scenes {
    private final WantedLevels wanted = new WantedLevels();
    private FreePlay play;
    private Scene scene;

    Scene of(FreePlay now) {
        if (now != play) {
            play = now;
            scene = made(now);
        }
        return scene;
    }

    private Scene made(FreePlay now) {
        TankState tank = now.truth();
        Settings settings = now.settings();
        return new Scene(
                now.unit(),
                settings,
                now.rest(),
                tank.foam().skimmateMlPerDay(),
                tank.vessels().cupMl(),
                now.cupPtCo(),
                wanted.of(now.unit(), settings),
                true);
    }
}
