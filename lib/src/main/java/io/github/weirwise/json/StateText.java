package io.github.weirwise.json;

import io.github.weirwise.advice.KeptState;
import io.github.weirwise.internal.kept.LibraryVersion;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.WrongValueException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * What was kept of a journal, as text.
 *
 * @param library version that wrote it, the only one that reads it
 * @param entries how many were taken in
 * @param newest when the newest of them was made
 * @param data bytes with a checksum in base 64 (RFC 4648), in pieces
 */
record StateText(String library, int entries, Optional<Instant> newest, List<String> data) {
    private static final int PIECE = 16_000;

    static StateText of(KeptState state) {
        String text = Base64.getEncoder().encodeToString(state.toBytes());
        List<String> pieces = new ArrayList<>();
        for (int from = 0; from < text.length(); from += PIECE) {
            pieces.add(text.substring(from, Math.min(text.length(), from + PIECE)));
        }
        return new StateText(LibraryVersion.current(), state.entries(), state.newest(), pieces);
    }

    KeptState state() {
        if (!library.equals(LibraryVersion.current())) {
            throw new WrongValueException(
                    "state",
                    Phrase.of("json.stateOfOther", Quote.plain(library, 30), LibraryVersion.current()),
                    Phrase.of("advice.kept.giveWhole"));
        }
        byte[] bytes;
        try {
            bytes = Base64.getDecoder().decode(String.join("", data));
        } catch (IllegalArgumentException notBase64) {
            bytes = new byte[0];
        }
        return KeptState.of(bytes);
    }
}
