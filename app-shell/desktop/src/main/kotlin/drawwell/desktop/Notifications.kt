package drawwell.desktop

import drawwell.surface.Effect

/** What is said while the window may be out of sight, where the system has a tray. */
class Notifications(tray: () -> Tray?) {
    private val tray by lazy(tray)
    private val shown = mutableSetOf<String>()

    fun areOn(): Boolean = tray != null

    /** Whether it could be shown. A tray sounds whenever it speaks, so a quiet one only takes away what its slot said before. */
    fun show(alarm: Effect.SetAlarm): Boolean {
        val tray = tray ?: return false
        if (shown.remove(alarm.slot)) tray.takeBack()
        if (alarm.quiet) return false
        shown += alarm.slot
        tray.say(alarm.title, alarm.text)
        return true
    }
}
