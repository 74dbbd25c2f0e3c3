package drawwell.ui

import androidx.compose.runtime.Stable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import drawwell.surface.Appearance
import drawwell.surface.Clock
import drawwell.surface.DrawwellInterface
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Screen
import drawwell.surface.Update
import kotlinx.coroutines.CancellationException
import kotlinx.coroutines.CompletableDeferred
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.NonCancellable
import kotlinx.coroutines.channels.Channel
import kotlinx.coroutines.coroutineScope
import kotlinx.coroutines.launch
import kotlinx.coroutines.withContext

/** Says to the core what the person did, in order and off the thread that draws, and holds what it answers. */
@Stable
class Conversation(private val host: Host) {
    /** What is to be seen; nothing until the record is open. */
    var screen: Screen? by mutableStateOf(null)
        private set

    /** What could not be done, until it is closed or something else is done. */
    var trouble: Told? by mutableStateOf(null)
        private set

    private class Ask(
        val says: (DrawwellInterface, Clock) -> Update?,
        val byPerson: Boolean,
        val anew: Boolean = false,
    ) {
        val answered = CompletableDeferred<Unit>()
    }

    /** None is lost, also where the screen goes away just as one is taken. */
    private val asks: Channel<Ask> = Channel(Channel.UNLIMITED) { untaken -> again(untaken) }
    private var own: OpenRecord? = null
    private var lookAround: OpenRecord? = null

    /** Which core knows how the host can call, and what it was told of that. */
    private var told: Pair<DrawwellInterface, Event.AlarmsAre>? = null

    fun send(event: Event) {
        ask { core, now -> core.update(event, now) }
    }

    /** The person is back, an alarm rang, or the clock was set: the record is looked at again. */
    fun wake() {
        asks.trySend(Ask(::woken, byPerson = false))
    }

    /** Brings in a file that came from elsewhere, without being asked for here. */
    fun importFile(path: String) {
        bringInAnd(path) {}
    }

    /** The same, and something behind it on the record's thread, whatever came of it. */
    fun bringInAnd(path: String, then: () -> Unit) {
        ask { core, now ->
            try {
                core.importFile(path, now)
            } finally {
                then()
            }
        }
    }

    /** The language changed, or something else that a record is opened with: the host is asked for it again. */
    fun openAnew() {
        asks.trySend(Ask(::woken, byPerson = false, anew = true))
    }

    /** Shows something that the host has to tell, such as an alarm it could not show elsewhere. */
    fun tell(told: Told) {
        trouble = told
    }

    /** Time has gone on: the same place is asked for again. */
    fun lookAgain() {
        asks.trySend(Ask({ core, now -> Update(core.here(now), emptyList()) }, byPerson = false))
    }

    /** Closes what is said about a trouble; where no record is open, tries to open it again. */
    fun dismissTrouble() {
        trouble = null
        if (own == null) ask { core, now -> Update(core.here(now), emptyList()) }
    }

    /** Talks until it is cancelled. What was begun is ended, or a tap would be lost where the screen is turned meanwhile. */
    suspend fun run() = coroutineScope {
        val talk = this
        wake()
        for (ask in asks) {
            withContext(NonCancellable) { talk.answer(ask) }
            ask.answered.complete(Unit)
        }
    }

    private fun again(ask: Ask) {
        asks.trySend(ask)
    }

    private fun ask(says: (DrawwellInterface, Clock) -> Update?): Ask =
        Ask(says, byPerson = true).also { asks.trySend(it) }

    /** The own record first hears how it can call, where that is news to it; the invented family never calls. */
    private fun woken(core: DrawwellInterface, now: Clock): Update {
        val calls = core to host.alarmsAre
        if (lookAround == null && calls != told) {
            core.update(calls.second, now)
            told = calls
        }
        return core.update(Event.Wake, now)
    }

    private suspend fun CoroutineScope.answer(ask: Ask) {
        try {
            val update = withContext(host.recordThread) {
                if (ask.anew) own = null
                val record = lookAround ?: own ?: host.openOwnRecord().also { own = it }
                ask.says(record.core, record.now())
            }
            if (ask.byPerson || screen == null) trouble = null
            if (update != null) take(update)
        } catch (cancelled: CancellationException) {
            throw cancelled
        } catch (failure: Throwable) {
            trouble = Told.of(failure)
        }
    }

    private suspend fun CoroutineScope.take(update: Update) {
        val ofTheOwn = lookAround == null
        screen = update.screen
        update.effects.forEach { carryOut(it) }
        if (ofTheOwn) keep(update.screen.frame().look)
    }

    /** So that the next start is in it from the first frame on. */
    private suspend fun keep(look: Appearance) {
        if (look != host.lastLook) withContext(host.recordThread) { host.keepLook(look) }
    }

    private suspend fun CoroutineScope.carryOut(effect: Effect) {
        val rings = lookAround == null
        when (effect) {
            is Effect.Buzz -> host.buzz()
            is Effect.KeepScreenOn -> host.keepScreenOn(effect.on)
            is Effect.SetAlarm -> if (rings) host.setAlarm(effect)
            is Effect.ClearAlarm -> if (rings) host.clearAlarm(effect.key)
            is Effect.Dial -> host.dial(effect.number)
            is Effect.HandOver -> launch {
                host.handOver(effect.fileName, effect.contentType) { path ->
                    ask { core, now -> core.export(effect.what, path, now) }.answered.await()
                }
            }
            is Effect.PickFile -> launch {
                host.pickFile(effect.contentTypes)?.let(::importFile)
            }
            // A folder is watched at a consultant's desk only.
            is Effect.PickFolder, is Effect.LeaveFolder -> Unit
            is Effect.OpenLookAround -> {
                lookAround = withContext(host.recordThread) { host.openLookAround() }
                lookAgain()
            }
            is Effect.CloseLookAround -> {
                withContext(host.recordThread) { (lookAround?.core as? AutoCloseable)?.close() }
                lookAround = null
                lookAgain()
            }
            is Effect.ForgetFiles -> host.forgetFiles()
            is Effect.KeepKey -> withContext(host.recordThread) { own?.core?.key()?.let(host::keepKey) }
            is Effect.Maintain -> asks.trySend(Ask({ core, now -> core.maintain(now) }, byPerson = false))
        }
    }
}
