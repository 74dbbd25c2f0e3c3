package drawwell.desktop

import drawwell.surface.Effect
import java.util.concurrent.Executors
import java.util.concurrent.ScheduledFuture
import java.util.concurrent.TimeUnit

/** Rings at instants; an alarm replaces the one of the same key, and one that has rung does not ring again when it is set again. */
class AlarmClock(private val now: () -> Long, private val ring: (Effect.SetAlarm) -> Unit) {
    private val timer = Executors.newSingleThreadScheduledExecutor { work ->
        Thread(work, "drawwell-alarms").apply { isDaemon = true }
    }
    private val set = mutableMapOf<String, ScheduledFuture<*>>()
    private val rung = mutableMapOf<String, Long>()

    @Synchronized
    fun set(alarm: Effect.SetAlarm) {
        set.remove(alarm.key)?.cancel(false)
        if (rung[alarm.key] == alarm.unixMilliseconds) return
        val wait = (alarm.unixMilliseconds - now()).coerceAtLeast(0)
        set[alarm.key] = timer.schedule({ rings(alarm) }, wait, TimeUnit.MILLISECONDS)
    }

    @Synchronized
    fun clear(key: String) {
        set.remove(key)?.cancel(false)
        rung.remove(key)
    }

    private fun rings(alarm: Effect.SetAlarm) {
        synchronized(this) { rung[alarm.key] = alarm.unixMilliseconds }
        ring(alarm)
    }
}
