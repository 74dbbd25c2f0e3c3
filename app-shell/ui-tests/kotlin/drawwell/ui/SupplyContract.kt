package drawwell.ui

import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.assertContentDescriptionEquals
import androidx.compose.ui.test.assertIsNotSelected
import androidx.compose.ui.test.assertIsSelected
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performScrollTo
import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** Supply is one tap away, is told as well as drawn, and over other days with one tap more. */
abstract class SupplyContract : ShellContract() {
    @Test
    fun isOneTapFromTheFoot() {
        val stage = begun()
        stage.tap("place-supply")
        assertEquals(1, stage.gestures)
        assertTrue(stage.screen is Screen.Supply)
        rule.onNodeWithTag("place-supply").assertIsSelected()
    }

    @Test
    fun anEmptyRecordIsToldInWordsAndDrawsNothing() {
        val stage = begun()
        stage.tap("place-supply")
        rule.onNodeWithTag("supply-head").assertContentDescriptionEquals(supply(stage).spoken)
        listOf("weeks-picture", "hours-picture", "span-7").forEach { rule.onNodeWithTag(it).assertDoesNotExist() }
    }

    @Test
    fun anotherSpanIsOneTap() {
        val stage = full()
        val spans = supply(stage).spans.options
        assertTrue("only ${spans.map { it.key }}", spans.size > 2)
        spans.forEach { span ->
            rule.onNodeWithTag(span.key).performScrollTo()
            stage.tap(span.key)
            rule.onNodeWithTag(span.key).assertIsSelected()
            (spans - span).forEach { rule.onNodeWithTag(it.key).assertIsNotSelected() }
            assertEquals(span.event, supply(stage).spans.options.single { it.chosen }.event)
        }
    }

    @Test
    fun everyPictureIsOneThingWithItsDescription() {
        val stage = full()
        told("supply-head", supply(stage).spoken)
        told("weeks-picture", supply(stage).weeks.spoken)
        val supply = supply(stage.behind())
        told("supply-head", supply.spoken)
        told("hours-picture", supply.hours.spoken)
        assertEquals(2, supply.sides.size)
        supply.sides.forEach {
            val side = it.column.part.name.lowercase()
            told("column-$side", it.column.spoken)
            told("weeks-$side", it.weeks.spoken)
        }
    }

    @Test
    fun allThatIsTouchedIsLargeEnough() {
        val stage = full()
        largeEnough(stage, 7)
        largeEnough(stage.behind(), 7)
    }

    private fun largeEnough(stage: Stage, least: Int) {
        val touched = rule.onAllNodes(touchable).fetchSemanticsNodes()
        assertTrue("only ${touched.size}", touched.size > least)
        touched.forEach { node ->
            val place = stage.place(node)
            val key = node.config.getOrElse(SemanticsProperties.TestTag) { "untagged" }
            assertTrue("$key is too small: $place", place.width >= 55.9f && place.height >= 55.9f)
        }
    }

    @Test
    fun leftStandsLeftAndInLargeTypeOverRight() {
        val stage = full().behind()
        assertTrue(place(stage, "weeks-left").right < place(stage, "weeks-right").left)
        stage.largeType()
        assertTrue(place(stage, "weeks-left").bottom < place(stage, "weeks-right").top)
    }

    @Test
    fun theWordTheFigureAndThePictureAreSeenWithoutScrollingAlsoAtTwiceTheType() {
        val stage = full()
        seenWhole(stage, "supply-head", "weeks-picture", "span-28", "supply-more")
        stage.largeType()
        seenWhole(stage, "supply-head", "weeks-picture")
    }

    private fun seenWhole(stage: Stage, vararg tags: String) = tags.forEach { tag ->
        val node = rule.onNodeWithTag(tag).fetchSemanticsNode()
        assertTrue("$tag lies outside: ${stage.place(node)}", stage.place(node).bottom <= Stage.TALL)
        assertEquals("$tag is cut off", node.size.height.toFloat(), node.boundsInRoot.height, 1f)
    }

    private fun Stage.behind(): Stage = apply {
        rule.onNodeWithTag("supply-more").performScrollTo()
        tap("supply-more")
    }

    private fun full(): Stage = begun().apply {
        SomeDays.on(this)
        say(Event.Go(Place.Supply(7u)))
    }

    private fun supply(stage: Stage) = (stage.screen as Screen.Supply).supply

    private fun place(stage: Stage, tag: String) = stage.place(rule.onNodeWithTag(tag).fetchSemanticsNode())

    private fun told(tag: String, spoken: String) {
        assertTrue("$tag is not told", spoken.isNotBlank())
        rule.onNodeWithTag(tag).assertContentDescriptionEquals(spoken)
    }

    private companion object {
        val touchable = SemanticsMatcher("can be touched") { it.config.contains(SemanticsActions.OnClick) }
    }
}
