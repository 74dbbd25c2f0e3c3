package drawwell.desktop

import drawwell.surface.Effect
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Test

/** One slot says one thing at a time, and a quiet one leaves the tray silent. */
class NotificationsTest {
    private val seen = mutableListOf<String>()
    private val tray = object : Tray {
        override fun say(title: String, text: String) {
            seen += title
        }

        override fun takeBack() {
            seen += "taken back"
        }
    }
    private val notifications = Notifications { tray }

    private fun alarm(title: String, slot: String, quiet: Boolean = false) = Effect.SetAlarm(title, slot, 1, title, "", quiet)

    @Test
    fun theLaterOfASlotTakesThePlaceOfTheEarlier() {
        assertTrue(notifications.show(alarm("set up", "next")))
        assertTrue(notifications.show(alarm("still going", "running")))
        assertTrue(notifications.show(alarm("due", "next")))
        assertEquals(listOf("set up", "still going", "taken back", "due"), seen)
    }

    @Test
    fun aQuietOneIsLeftToTheWindowAndTakesAwayWhatItsSlotSaid() {
        assertFalse(notifications.show(alarm("set up", "next", quiet = true)))
        assertEquals(emptyList<String>(), seen)
        notifications.show(alarm("due", "next"))
        assertFalse(notifications.show(alarm("late", "next", quiet = true)))
        assertEquals(listOf("due", "taken back"), seen)
    }

    @Test
    fun withoutATrayNothingIsShownAndThatIsKnown() {
        val none = Notifications { null }
        assertFalse(none.areOn())
        assertFalse(none.show(alarm("due", "next")))
        assertTrue(notifications.areOn())
    }
}
