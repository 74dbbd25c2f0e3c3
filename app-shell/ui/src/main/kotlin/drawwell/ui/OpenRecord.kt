package drawwell.ui

import drawwell.surface.Clock
import drawwell.surface.DrawwellInterface

/** A record that is open, and the clock that goes with it. */
class OpenRecord(
    val core: DrawwellInterface,
    val now: () -> Clock,
)
