package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.picture.Collected;
import io.github.weirwise.demo.picture.CupFill;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.practice.FreePlay;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.Settings;
import java.util.Optional;

/** The newest moment of a tank as a picture, worked out once however many ask for it. */
final class Scenes {
    private FreePlay play;
    private Scene scene;

    Scene of(FreePlay now, CupFill cup) {
        if (now != play || !cup.equals(scene.collected().cup())) {
            play = now;
            scene = made(now, cup);
        }
        return scene;
    }

    private Scene made(FreePlay now, CupFill cup) {
        TankState tank = now.truth();
        Settings settings = now.settings();
        return new Scene(
                now.unit(),
                settings,
                now.rest(),
                tank.of(Stock.SKIMMATE_ML_PER_DAY),
                Collected.of(tank, now.waste(), cup, now.spilledLitres()),
                Optional.empty(),
                true);
    }
}
