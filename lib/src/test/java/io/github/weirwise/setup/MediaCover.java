package io.github.weirwise.setup;

/** Share of the media's height that a level covers, 0 to 1. */
final class MediaCover {
    private MediaCover() {}

    static double at(FilterBody filter, double levelMm) {
        return Math.max(0, Math.min(1, (levelMm - filter.mediaBottomMm()) / filter.mediaHeightMm()));
    }
}
