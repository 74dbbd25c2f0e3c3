package drawwell.ui.pictures

import drawwell.surface.Sign

/** The strokes of each sign, drawn by hand on a field of 24 by 24. */
internal object SignStrokes {
    const val FIELD = 24f

    /** Thickness of the pen on that field. */
    const val PEN = 1.9f

    fun of(sign: Sign): String = when (sign) {
        Sign.NONE -> ""
        // Two columns, each with its water line.
        Sign.NOW -> "M4 4V20H10V4M14 4V20H20V4M4 13.5H10M14 9H20"
        // The sun over the edge of the land.
        Sign.DAY -> "M2.5 18.5H21.5M6.5 18.5a5.5 5.5 0 0 1 11 0M12 6V8.8M4.9 10.4L6.7 12.2M19.1 10.4L17.3 12.2"
        // A low arc over the water.
        Sign.TONIGHT -> "M3.4 13.2C5.6 5.6 18.4 5.6 20.6 13.2M2.5 18.2C4.9 16.4 7.2 16.4 9.6 18.2S14.4 20 16.8 18.2C18.4 17 20 16.8 21.5 17.2"
        // The water line as it goes through the weeks.
        Sign.SUPPLY -> "M3 20H21M3.5 13.5C6.5 13.5 7 9.5 10 9.5S13.5 11.5 16 9S18.5 5 20.5 5"
        // A flange from the side, with its tube.
        Sign.KIT -> "M3.5 4.5C5 9 7.5 10.4 11 10.4H20.5M3.5 19.5C5 15 7.5 13.6 11 13.6H20.5M20.5 10.4V13.6"
        // A sheet that is handed across.
        Sign.VISIT -> "M5.5 3.5H14.5L18.5 7.5V20.5H5.5ZM14.5 3.5V7.5H18.5M9 12H15M9 16H13"
        // One large, one small.
        Sign.FAMILY -> "M9 10.8a3.4 3.4 0 1 0 0-6.8a3.4 3.4 0 1 0 0 6.8M3 20C3 15.8 5.4 13.8 9 13.8S15 15.8 15 20" +
            "M18 14.4a2.1 2.1 0 1 0 0-4.2a2.1 2.1 0 1 0 0 4.2M17.8 17C20 17 21.3 18.1 21.3 20"
        Sign.START -> "M8.2 5.2L18.4 12L8.2 18.8Z"
        Sign.FINISH -> "M6.5 6.5H17.5V17.5H6.5Z"
        Sign.REST -> "M9 6V18M15 6V18"
        Sign.LETDOWN -> "M12 3.6C12 3.6 6.3 10.4 6.3 14.9A5.7 5.7 0 0 0 17.7 14.9C17.7 10.4 12 3.6 12 3.6Z"
        Sign.STRONGER -> "M12 19V5.5M6 11.5L12 5.5L18 11.5"
        Sign.SOFTER -> "M12 5V18.5M6 12.5L12 18.5L18 12.5"
        // Short waves, long waves.
        Sign.FASTER -> "M2.5 12C3.6 5.5 5.6 5.5 6.9 12S10.2 18.5 11.5 12S14.8 5.5 16.1 12S19.8 18.5 21.5 12"
        Sign.SLOWER -> "M2.5 12C5 5.5 9.5 5.5 12 12S19 18.5 21.5 12"
        Sign.HURTS -> "M13.4 3L6 13.6H11.3L10.4 21L18 10.2H12.6Z"
        Sign.UNDO -> "M9 5.5L4.3 10.2L9 14.9M4.3 10.2H14.8A4.9 4.9 0 0 1 14.8 20H10"
        Sign.REDO -> "M15 5.5L19.7 10.2L15 14.9M19.7 10.2H9.2A4.9 4.9 0 0 0 9.2 20H14"
        Sign.ADD -> "M12 5V19M5 12H19"
        Sign.EARLIER -> "M15 5L8 12L15 19"
        Sign.LATER -> "M9 5L16 12L9 19"
        Sign.BACK -> "M20 12H4.5M11 5.5L4.5 12L11 18.5"
        Sign.UNKNOWN -> "M8.3 9.2A3.7 3.7 0 1 1 13.6 12.5C12.5 13.1 12 13.8 12 15.2M12 18.9V19.1"
        // The question in a ring: what a word or a picture means.
        Sign.HELP -> "M12 21a9 9 0 1 0 0-18a9 9 0 1 0 0 18M9.6 9.9A2.5 2.5 0 1 1 13.1 12.1C12.4 12.5 12 13 12 13.9M12 16.6V16.8"
        Sign.CAUTION -> "M12 4L21.5 20H2.5ZM12 10V14.4M12 17V17.2"
        Sign.OUT -> "M12 15V4M7.5 8.5L12 4L16.5 8.5M5 14V20H19V14"
        // One peg, passed by an arc.
        Sign.SKIP -> "M12 20V14.6M3.5 15.5C5.2 6.2 16.2 3.9 20.2 14M20.9 8.6L20.2 14L15.4 11.6M3 20H8.2M15.8 20H21"
        // A peg, and a little time beside it.
        Sign.SNOOZE -> "M6 20V9.2M6 9.2A2.7 2.7 0 1 0 6 3.8A2.7 2.7 0 1 0 6 9.2M16 20A4.9 4.9 0 1 0 16 10.2A4.9 4.9 0 1 0 16 20M16 12.6V15.3L17.9 16.6M2.8 20H9.2"
        Sign.CALENDAR -> "M4 6.5H20V20H4ZM4 11H20M8.3 3.8V8M15.7 3.8V8M8.3 15.4H8.5M12 15.4H12.2M15.7 15.4H15.9"
        // Three sliders, each set where somebody likes it.
        Sign.SETTINGS -> "M4 7H7.4M11.6 7H20M9.5 9.1a2.1 2.1 0 1 0 0-4.2a2.1 2.1 0 1 0 0 4.2M4 12.5H13.4M17.6 12.5H20M15.5 14.6a2.1 2.1 0 1 0 0-4.2a2.1 2.1 0 1 0 0 4.2" +
            "M4 18H5.4M9.6 18H20M7.5 20.1a2.1 2.1 0 1 0 0-4.2a2.1 2.1 0 1 0 0 4.2"
        Sign.IN -> "M12 4V15M7.5 10.5L12 15L16.5 10.5M5 14V20H19V14"
    }
}
