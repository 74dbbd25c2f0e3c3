package drawwell.ui

import drawwell.surface.Appearance
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Export
import drawwell.surface.Hand
import drawwell.surface.Palette
import drawwell.surface.Trouble
import drawwell.surface.TroubleKind
import kotlinx.coroutines.delay
import kotlinx.coroutines.launch
import kotlinx.coroutines.runBlocking
import kotlinx.coroutines.withTimeout
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Test

/** What the shell says to the core, and what it does with the answer. */
class ConversationTest {
    private val host = FakeHost()
    private val conversation = Conversation(host)
    private val alarm = Effect.SetAlarm("a", "slot", 1, "", "", quiet = false)

    private fun talking(test: suspend () -> Unit) = runBlocking {
        val talk = launch { conversation.run() }
        withTimeout(10_000) {
            until { conversation.screen != null || conversation.trouble != null }
            test()
        }
        talk.cancel()
    }

    private suspend fun until(holds: () -> Boolean) {
        while (!holds()) delay(1)
    }

    @Test
    fun whatWasDoneIsToldInOrder() = talking {
        val done = (0..200).map { Event.Dismiss("$it") }
        done.forEach(conversation::send)
        until { host.own.told.size == done.size + 2 }
        assertEquals(listOf(CALLS, Event.Wake) + done, host.own.told)
    }

    @Test
    fun effectsAreCarriedOutByTheHost() = talking {
        host.own.answers = { event ->
            if (event == Event.Start) {
                listOf(
                    Effect.Buzz("b"), Effect.KeepScreenOn(true), alarm, Effect.ClearAlarm("c"),
                    Effect.HandOver(Export.Record, "record.jsonl", ""), Effect.PickFile("p", emptyList()), Effect.Maintain,
                )
            } else {
                emptyList()
            }
        }
        conversation.send(Event.Start)
        until { host.own.paths.size == 3 }
        assertEquals(listOf("buzz", "screen true", "alarm a", "no alarm c"), host.asked)
        assertEquals(setOf("out ${Export.Record} folder/record.jsonl", "in picked", "tended"), host.own.paths.toSet())
    }

    @Test
    fun theInventedFamilyNeitherRingsNorIsMistakenForTheOwnRecord() = talking {
        host.own.answers = { if (it == Event.LookAround) listOf(Effect.OpenLookAround) else emptyList() }
        host.other.answers = {
            when (it) {
                Event.Start -> listOf(alarm, Effect.ClearAlarm("a"), Effect.Buzz("b"))
                Event.LeaveLookAround -> listOf(Effect.CloseLookAround)
                else -> emptyList()
            }
        }
        conversation.send(Event.LookAround)
        until { conversation.screen?.frame()?.title == "other" }
        conversation.send(Event.Start)
        conversation.send(Event.LeaveLookAround)
        until { conversation.screen?.frame()?.title == "own" }
        assertEquals(listOf("buzz"), host.asked)
        assertEquals(listOf(Event.Start, Event.LeaveLookAround), host.other.told)
    }

    @Test
    fun theLookOfTheOwnRecordIsKeptAndNotThatOfTheInventedFamily() {
        val night = Appearance(Hand.LEFT, Palette.NIGHT)
        host.own.look = night
        talking {
            until { host.lastLook == night }
            host.own.answers = { if (it == Event.LookAround) listOf(Effect.OpenLookAround) else emptyList() }
            conversation.send(Event.LookAround)
            until { conversation.screen?.frame()?.title == "other" }
            conversation.send(Event.Start)
            until { host.other.told.isNotEmpty() }
            assertEquals(night, host.lastLook)
        }
    }

    @Test
    fun whatWasSaidIsDoneOnceThoughTheScreenGoesAwayBeforeItIsAnswered() = runBlocking {
        val busy = BusyThread()
        host.recordThread = busy
        host.lastLook = host.own.look
        val before = launch { conversation.run() }
        withTimeout(10_000) {
            until { busy.waits }
            busy.works()
            until { conversation.screen != null }
            conversation.send(Event.Start)
            until { busy.waits }
            before.cancel()
            val after = launch { conversation.run() }
            until { busy.works(); before.isCompleted && host.own.told.size == 4 }
            assertEquals(listOf(CALLS, Event.Wake, Event.Start, Event.Wake), host.own.told)
            after.cancel()
            until { busy.works(); after.isCompleted }
        }
    }

    @Test
    fun troubleIsSaidAndTheConversationGoesOn() = talking {
        val before = conversation.screen
        host.own.answers = { event ->
            if (event == Event.Undo) throw Trouble.Told(TroubleKind.BAD_INPUT, "field", "what", "do")
            if (event == Event.Redo) error("a fault")
            emptyList()
        }
        conversation.send(Event.Undo)
        until { conversation.trouble != null }
        assertEquals(Told("field", "what", "do"), conversation.trouble)
        assertEquals(before, conversation.screen)
        conversation.send(Event.Redo)
        until { conversation.trouble?.what == LastWords.WHAT }
        conversation.send(Event.Finish)
        until { conversation.trouble == null }
        assertEquals(Event.Finish, host.own.told.last())
    }

    @Test
    fun aMissingCoreIsSaidAndTriedAgain() {
        host.opens = { throw UnsatisfiedLinkError("gone") }
        talking {
            assertEquals(LastWords.NO_CORE, conversation.trouble?.what)
            assertNull(conversation.screen)
            host.opens = { host.own }
            conversation.dismissTrouble()
            until { conversation.screen != null }
            assertNull(conversation.trouble)
        }
    }

    @Test
    fun howTheHostCanCallIsToldAtTheStartAndAgainOnlyWhenItChanged() = talking {
        conversation.wake()
        until { host.own.told.size == 3 }
        host.alarmsAre = Event.AlarmsAre(exact = false, shown = true)
        conversation.wake()
        until { host.own.told.size == 5 }
        assertEquals(listOf(CALLS, Event.Wake, Event.Wake, host.alarmsAre, Event.Wake), host.own.told)
    }

    @Test
    fun theInventedFamilyNeverCallsAndHearsNothingOfIt() = talking {
        host.own.answers = { if (it == Event.LookAround) listOf(Effect.OpenLookAround) else emptyList() }
        conversation.send(Event.LookAround)
        until { conversation.screen?.frame()?.title == "other" }
        host.alarmsAre = Event.AlarmsAre(exact = false, shown = false)
        conversation.wake()
        until { host.other.told.isNotEmpty() }
        assertEquals(listOf<Event>(Event.Wake), host.other.told)
    }

    @Test
    fun anAlarmThatIsToldInTheWindowStaysWhenTheRecordIsLookedAtAgain() = talking {
        val told = Told("", "It is time", "", cares = false)
        conversation.tell(told)
        conversation.wake()
        until { host.own.told.size == 3 }
        conversation.wake()
        until { host.own.told.size == 4 }
        assertEquals(told, conversation.trouble)
    }

    private companion object {
        val CALLS = Event.AlarmsAre(exact = true, shown = true)
    }
}
