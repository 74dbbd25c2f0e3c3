package drawwell.desktop

import drawwell.surface.Clock
import java.time.Instant
import java.time.ZoneId
import java.time.ZonedDateTime

/**
 * The clock on the wall, or one that starts at a given moment and runs on from there. What offset it shows is not told:
 * Java's zone data come with Java, not with the desk, and may be older than the core's.
 */
class WallClock(start: ZonedDateTime?) {
    private val zone: ZoneId? = start?.zone
    private val ahead: Long = if (start == null) 0 else start.toInstant().toEpochMilli() - Instant.now().toEpochMilli()

    fun now() = Clock(
        unixMilliseconds = Instant.now().toEpochMilli() + ahead,
        zone = (zone ?: ZoneId.systemDefault()).id,
    )
}
