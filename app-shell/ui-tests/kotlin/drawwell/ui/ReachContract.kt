package drawwell.ui

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.onNodeWithTag
import drawwell.surface.Deed
import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** One thumb: all that is touched lies low, is large, stands apart, and turns round for the left hand. */
abstract class ReachContract : ShellContract() {
    @Test
    fun beforeASessionForTheRightHand() = holds(begun())

    @Test
    fun beforeASessionForTheLeftHand() = holds(begun(hand = "left"))

    @Test
    fun whileItRunsForTheRightHand() = holds(running("right"))

    @Test
    fun whileItRunsForTheLeftHand() = holds(running("left"))

    @Test
    fun whileItHurts() {
        val stage = running("right")
        stage.say(Event.Mark(Deed.HURTS))
        holds(stage)
    }

    @Test
    fun whileItRunsAsLastTime() {
        val stage = running("right")
        stage.tap("finish")
        stage.tap("amounts-later")
        stage.host.pass(3 * 3600)
        stage.tap("start")
        assertTrue("as-last-time-vacuum" in places(stage))
        holds(stage)
        stage.tap("as-last-time-vacuum")
        assertTrue("as-last-time-vacuum" !in places(stage))
    }

    @Test
    fun forAmountsForTheRightHand() = holds(amounts("right"))

    @Test
    fun forAmountsForTheLeftHand() = holds(amounts("left"))

    @Test
    fun theLeftHandSeesItTurnedRound() {
        val stage = running("right")
        val right = places(stage)
        stage.say(Event.Enter("settings", "hand", "left"))
        stage.say(Event.Go(drawwell.surface.Place.Now))
        val left = places(stage)
        val turned = right.keys.filter { it.startsWith("mark-") || it == "undo" }
        assertTrue(turned.size >= 8)
        turned.forEach { key ->
            assertEquals(key, Stage.WIDE - right.getValue(key).right, left.getValue(key).left, 2f)
            assertEquals(key, right.getValue(key).center.y, left.getValue(key).center.y, 2f)
        }
    }

    @Test
    fun aDayOpensOtherDaysUnderTheThumbAndClosesThemWhenOneIsChosen() {
        val stage = begun()
        stage.say(Event.Go(Place.Day(0u)))
        val row = listOf("day-earlier", "choose-day").associateWith { stage.place(rule.onNodeWithTag(it).fetchSemanticsNode()) }
        row.forEach { (key, place) -> assertTrue("$key lies too high: $place", place.top >= Stage.TALL * 0.6f && place.height >= 55.9f) }
        assertEquals("one row", row.getValue("day-earlier").center.y, row.getValue("choose-day").center.y, 1f)
        rule.onNodeWithTag("day-1").assertDoesNotExist()
        stage.tap("choose-day")
        stage.tap("day-1")
        assertTrue((stage.screen as Screen.Day).day.choice.days.single { it.key == "day-1" }.chosen)
        rule.onNodeWithTag("day-2").assertDoesNotExist()
    }

    @Test
    fun leftStaysWhereLeftIs() {
        listOf("right", "left").forEach { hand ->
            if (hand == "right") held = amounts(hand) else held.say(Event.Enter("settings", "hand", hand))
            held.say(Event.Go(drawwell.surface.Place.Now))
            val places = places(held)
            assertTrue(places.getValue("column-left").right < places.getValue("column-right").left)
        }
    }

    private lateinit var held: Stage

    private fun running(hand: String): Stage = begun(hand = hand).apply {
        tap("start")
        host.pass(20)
        tap("mark-stronger")
        tap("mark-faster")
        host.pass(60)
        tap("mark-letdown")
    }

    private fun amounts(hand: String): Stage = running(hand).apply {
        host.pass(600)
        tap("finish")
    }

    private fun places(stage: Stage): Map<String, Rect> = touched().associate { it.tag() to stage.place(it) }

    private fun touched(): List<SemanticsNode> =
        rule.onAllNodes(touchable).fetchSemanticsNodes()

    private fun holds(stage: Stage) {
        val places = places(stage)
        assertTrue("only ${places.keys}", places.size > 6)
        places.forEach { (key, place) ->
            // A column is drawn from the ground up: its lower half is where most amounts lie.
            val top = if (key.startsWith("column-")) place.center.y else place.top
            assertTrue("$key lies too high: $place", key in SELDOM || top >= Stage.TALL * 0.4f - 1)
            assertTrue("$key is too small: $place", place.width >= 55.9f && place.height >= 55.9f)
            assertTrue("$key lies outside: $place", place.left >= 0 && place.right <= Stage.WIDE + 0.1f)
        }
        val keys = places.keys.toList()
        keys.forEachIndexed { index, one ->
            keys.drop(index + 1).forEach { other ->
                val apart = apart(places.getValue(one), places.getValue(other))
                assertTrue("$one and $other are $apart apart", apart >= 7.5f || pinnedApart(one, other))
            }
        }
    }

    /** What scrolls may lie under what is pinned; it is cut off there and cannot be hit. */
    private fun pinnedApart(one: String, other: String) = (one in PINNED) != (other in PINNED)

    private fun apart(one: Rect, other: Rect): Float {
        val across = maxOf(other.left - one.right, one.left - other.right)
        val down = maxOf(other.top - one.bottom, one.top - other.bottom)
        return maxOf(across, down)
    }

    private fun SemanticsNode.tag() = config.getOrNull(SemanticsProperties.TestTag) ?: "untagged $id"

    private companion object {
        /** What nobody needs at night, and what can be done lower down as well. */
        val SELDOM = setOf("ready-settings", "type-amount-left", "type-amount-right", "type-amount-together")

        val PINNED = setOf(
            "start", "just-pumped", "finish", "amounts-done", "amounts-later", "undo", "redo", "back", "place-day",
            "place-now", "place-tonight", "place-supply", "place-kit", "place-visit",
        )
        val touchable = SemanticsMatcher("can be touched") {
            it.config.contains(SemanticsActions.OnClick) || it.config.contains(SemanticsActions.SetProgress)
        }
    }
}
