package drawwell.desktop

import java.time.OffsetDateTime
import java.time.ZoneId
import java.time.ZonedDateTime

/** Moments as they are written: RFC 3339, with the zone in brackets where it is known. */
object Moments {
    fun read(written: String): ZonedDateTime {
        val text = written.trim()
        return if (text.endsWith("]")) {
            ZonedDateTime.parse(text)
        } else {
            OffsetDateTime.parse(text).atZoneSameInstant(ZoneId.systemDefault())
        }
    }
}
