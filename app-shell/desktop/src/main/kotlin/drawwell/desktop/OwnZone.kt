package drawwell.desktop

import java.lang.management.ManagementFactory
import java.time.ZoneId
import java.util.TimeZone

/** The zone of the desk as it is now. Java keeps the one it started with, so it is made to look again, unless it was given one. */
object OwnZone {
    private const val NAME = "user.timezone"
    private val given = ManagementFactory.getRuntimeMXBean().inputArguments.any { it.startsWith("-D$NAME=") }

    fun look(): ZoneId {
        if (!given) {
            System.clearProperty(NAME)
            TimeZone.setDefault(null)
        }
        return ZoneId.systemDefault()
    }
}
