package drawwell.android

import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Trouble
import kotlinx.coroutines.launch

/** The phone was started, its time or zone set, the app replaced or its leave to ring changed: the core says anew what is to ring. */
class WakeReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        val home = (context.applicationContext as App).home
        val alarms = Alarms(context)
        val pending: PendingResult? = goAsync()
        home.behind.launch {
            try {
                val record = home.records.own()
                record.core.update(Event.Wake, record.now()).effects.forEach { carryOut(it, alarms) }
            } catch (trouble: Trouble) {
                // No one looks now. The app says it when it is opened.
            } catch (missing: LinkageError) {
                // The same.
            } finally {
                pending?.finish()
            }
        }
    }

    /** All else needs a person who looks. */
    private fun carryOut(effect: Effect, alarms: Alarms) = when (effect) {
        is Effect.SetAlarm -> alarms.set(effect.key, effect.unixMilliseconds, effect.title, effect.text)
        is Effect.ClearAlarm -> alarms.clear(effect.key)
        else -> Unit
    }
}
