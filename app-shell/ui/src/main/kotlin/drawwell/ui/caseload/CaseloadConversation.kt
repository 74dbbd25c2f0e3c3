package drawwell.ui.caseload

import androidx.compose.runtime.Stable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import drawwell.surface.CaseloadScreen
import drawwell.surface.CaseloadUpdate
import drawwell.surface.Clock
import drawwell.surface.DeskEvent
import drawwell.surface.DeskInterface
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Trouble
import drawwell.ui.Told
import drawwell.ui.frame
import kotlinx.coroutines.CancellationException
import kotlinx.coroutines.CompletableDeferred
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.NonCancellable
import kotlinx.coroutines.channels.Channel
import kotlinx.coroutines.coroutineScope
import kotlinx.coroutines.launch
import kotlinx.coroutines.withContext

/** Says to the core what the consultant did, in order and off the thread that draws, and holds what it answers. */
@Stable
class CaseloadConversation(private val host: CaseloadHost) {
    /** What is to be seen; nothing until the caseload is open. */
    var caseload: CaseloadScreen? by mutableStateOf(null)
        private set

    /** What could not be done, until it is closed or something else is done. */
    var trouble: Told? by mutableStateOf(null)
        private set

    private class Ask(val says: (DeskInterface, Clock) -> CaseloadUpdate, val byPerson: Boolean) {
        val answered = CompletableDeferred<Unit>()
    }

    private val asks: Channel<Ask> = Channel(Channel.UNLIMITED)
    private var open: OpenCaseload? = null

    fun send(event: Event) {
        ask { core, now -> core.update(event, now) }
    }

    /** Brings a file in that the person chose, and opens its family. */
    fun importFile(path: String) {
        ask { core, now -> core.importFile(path, now) }
    }

    /** Takes a file in that came by itself: what is open stays open. */
    fun importQuietly(path: String) {
        ask(byPerson = false) { core, now -> core.importQuietly(path, now) }
    }

    /** Time has gone on, or the window came to the front. */
    fun lookAgain() {
        ask(byPerson = false) { core, now -> CaseloadUpdate(core.here(now), emptyList()) }
    }

    /** Closes what is said about a trouble; where the caseload is not open, tries to open it again. */
    fun dismissTrouble() {
        trouble = null
        if (open == null) lookAgain()
    }

    /** Talks until it is cancelled. What was begun is ended. */
    suspend fun run() = coroutineScope {
        val talk = this
        val first = ask(byPerson = false) { core, now -> CaseloadUpdate(core.here(now), emptyList()) }
        launch {
            first.answered.await()
            maintain()
        }
        for (ask in asks) {
            withContext(NonCancellable) { talk.answer(ask) }
            ask.answered.complete(Unit)
        }
    }

    private fun ask(byPerson: Boolean = true, says: (DeskInterface, Clock) -> CaseloadUpdate): Ask =
        Ask(says, byPerson).also { asks.trySend(it) }

    private suspend fun CoroutineScope.answer(ask: Ask) {
        try {
            val update = withContext(host.recordThread) {
                val desk = open ?: opened()
                ask.says(desk.core, desk.now())
            }
            if (ask.byPerson) trouble = null
            take(update)
        } catch (cancelled: CancellationException) {
            throw cancelled
        } catch (failure: Throwable) {
            trouble = Told.of(failure)
        }
    }

    /** Copies and looks through all the desk keeps. It takes long with many families, so taps go on meanwhile. */
    private suspend fun maintain() {
        val desk = open ?: return
        try {
            withContext(Dispatchers.Default) { desk.core.maintain(desk.now()) }
        } catch (failure: Trouble) {
            trouble = Told.of(failure)
        }
        lookAgain()
    }

    private fun opened(): OpenCaseload {
        val desk = host.openCaseload()
        desk.core.update(Event.OnDesk(DeskEvent.FolderIs(host.folderName)), desk.now())
        open = desk
        return desk
    }

    private suspend fun CoroutineScope.take(update: CaseloadUpdate) {
        caseload = update.caseload
        update.effects.forEach { carryOut(it) }
        val look = update.caseload.families.frame().look
        if (look != host.lastLook) withContext(host.recordThread) { host.keepLook(look) }
    }

    private fun CoroutineScope.carryOut(effect: Effect) {
        when (effect) {
            is Effect.HandOver -> launch {
                host.handOver(effect.fileName, effect.contentType) { path ->
                    ask { core, now -> core.export(effect.what, path, now) }.answered.await()
                }
            }
            is Effect.PickFile -> launch { host.pickFile(effect.contentTypes)?.let(::importFile) }
            is Effect.PickFolder -> launch {
                host.pickFolder()
                send(Event.OnDesk(DeskEvent.FolderIs(host.folderName)))
            }
            is Effect.LeaveFolder -> launch {
                host.leaveFolder()
                send(Event.OnDesk(DeskEvent.FolderIs(host.folderName)))
            }
            is Effect.KeepKey -> launch { withContext(host.recordThread) { open?.core?.key()?.let(host::keepKey) } }
            is Effect.Maintain -> launch { maintain() }
            // A desk has nothing to buzz with and no lamp to hold, and it calls nobody.
            is Effect.Buzz, is Effect.KeepScreenOn, is Effect.SetAlarm, is Effect.ClearAlarm,
            is Effect.OpenLookAround, is Effect.CloseLookAround, is Effect.Dial, is Effect.ForgetFiles,
            -> Unit
        }
    }
}
