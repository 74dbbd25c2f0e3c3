package drawwell.desktop

import drawwell.surface.Clock
import kotlin.math.abs

/** Knows, when it is asked, whether the clock on the wall was set, the desk slept, or another zone holds since it was last asked. */
class ClockWatch(private val wall: () -> Clock, private val steady: () -> Long) {
    private var zone = wall().zone
    private var apart = apart(wall())

    fun changed(): Boolean {
        val now = wall()
        val went = now.zone != zone || abs(apart(now) - apart) > DRIFT
        zone = now.zone
        apart = apart(now)
        return went
    }

    /** How far the wall's clock and one that nobody sets are from each other: the same for as long as nothing happens. */
    private fun apart(now: Clock) = now.unixMilliseconds - steady() / A_MILLISECOND

    companion object {
        /** In milliseconds: how often it is worth asking. */
        const val EVERY = 60_000L

        /** Two clocks read one after the other, one of them kept right over the network. */
        private const val DRIFT = 2_000L
        private const val A_MILLISECOND = 1_000_000L
    }
}
