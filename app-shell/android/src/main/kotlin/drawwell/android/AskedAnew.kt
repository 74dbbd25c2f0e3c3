package drawwell.android

import android.content.BroadcastReceiver.PendingResult
import android.content.Context
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Trouble
import kotlinx.coroutines.launch

/** While no one looks, the core is asked what is to ring. What is shown stays: no one has seen it yet. */
internal class AskedAnew(private val context: Context) {
    private val alarms = Alarms(context)

    /** `then` is done whatever comes of it, and last of all the system hears that it may let the process go. */
    fun ask(pending: PendingResult?, then: () -> Unit = {}) {
        val home = (context.applicationContext as App).home
        home.behind.launch {
            try {
                val record = home.records.own()
                record.core.update(Event.Wake, record.now()).effects.forEach { carryOut(it) }
            } catch (trouble: Trouble) {
                // No one looks now. The app says it when it is opened.
            } catch (missing: LinkageError) {
                // The same.
            } finally {
                then()
                pending?.finish()
            }
        }
    }

    /** All else needs a person who looks. */
    private fun carryOut(effect: Effect) = when (effect) {
        is Effect.SetAlarm -> alarms.set(effect)
        is Effect.ClearAlarm -> alarms.clear(effect.key)
        else -> Unit
    }
}
