package drawwell.ui

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.requiredSize
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.assert
import androidx.compose.ui.test.assertContentDescriptionEquals
import androidx.compose.ui.test.onAllNodesWithText
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performImeAction
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextInput
import androidx.compose.ui.text.AnnotatedString
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Hand
import drawwell.surface.ListRow
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** Whatever Kit finds is drawn whole, told, and within the thumb's reach; a check takes one reading after the other. */
abstract class KitContract : ShellContract() {
    private val said = mutableListOf<Event>()
    private var shown by mutableStateOf<Screen>(KitSamples.check())

    @Test
    fun allThatWasFoundIsDrawn() {
        show(KitSamples.pump())
        val findings = (shown as Screen.Findings).findings
        findings.lines.forEach { drawn(it) }
        findings.asks.forEach { drawn(it.text) }
        findings.actions.forEach { drawn(it.label) }
        findings.dial?.let { dial -> (dial.arcs.map { it.label } + dial.legend).forEach { drawn(it) } }
        findings.sections.forEach { section ->
            rule.onNodeWithTag(section.key).performScrollTo()
            drawn(section.title)
            section.lines.forEach { drawn(it) }
            section.plot?.let { plot -> (plot.bands.map { it.label } + plot.legend).filter { it.isNotEmpty() }.forEach { drawn(it) } }
            section.fields.forEach { rule.onNodeWithTag("type-${it.field}").performScrollTo().assertContentDescriptionEquals(it.spoken) }
            section.rows.forEach { drawn(it.title) }
        }
    }

    @Test
    fun everyPictureIsOneThingWithItsDescription() {
        show(KitSamples.pump())
        pictures()
        shown = KitSamples.trace()
        rule.waitForIdle()
        pictures()
    }

    @Test
    fun allOfACheckIsDrawn() {
        show(KitSamples.check())
        val check = (shown as Screen.Check).check
        rule.onNodeWithTag("check-head").assertContentDescriptionEquals(check.spoken)
        drawn(check.nearLabel)
        check.near.forEach { drawn(it.label) }
        rule.onNodeWithTag("dial").performScrollTo().assertContentDescriptionEquals(checkNotNull(check.dial).spoken)
        check.readings.rows.forEach { drawn(it.title) }
        (check.at.flatMap { it.options } + check.setUp.flatMap { it.options } + check.asks.flatMap { it.actions }).forEach { drawn(it.label) }
    }

    @Test
    fun whatIsTouchedSaysItsEvent() {
        listOf(KitSamples.pump(), KitSamples.trace(), KitSamples.check()).forEachIndexed { place, screen ->
            if (place == 0) show(screen) else shown = screen
            rule.waitForIdle()
            actions(screen).forEach { action ->
                said.clear()
                touch(action)
                assertEquals(action.key, listOf(action.event), said.toList())
            }
        }
    }

    @Test
    fun whatIsTouchedIsLargeEnoughAndLiesApart() {
        show(KitSamples.pump())
        roomy()
        shown = KitSamples.check()
        rule.waitForIdle()
        roomy()
    }

    @Test
    fun theFiguresTheFieldAndTheEndLieUnderTheThumb() {
        show(KitSamples.check())
        val check = (shown as Screen.Check).check
        (check.near.map { it.key } + "type-reading" + check.done.key).forEach { key ->
            val place = place(key)
            assertTrue("$key lies too high: $place", place.top >= Stage.TALL * 0.4f - 1)
            assertTrue("$key lies too low: $place", place.bottom <= Stage.TALL)
        }
    }

    @Test
    fun theLeftHandSeesItTurnedRoundButFiguresRunAsOnARule() {
        show(KitSamples.check())
        val keys = listOf("less-reading", "more-reading", "undo", "side-left", "side-right")
        val right = keys.associateWith { scrolledTo(it) }
        shown = KitSamples.check(Hand.LEFT)
        rule.waitForIdle()
        keys.forEach { assertEquals(it, Stage.WIDE - right.getValue(it).right, scrolledTo(it).left, 2f) }
        val near = (shown as Screen.Check).check.near.map { scrolledTo(it.key) }
        assertTrue(near.zipWithNext().all { (one, next) -> next.left > one.left || next.top > one.top })
    }

    @Test
    fun atTwiceTheTypeNothingIsCutOff() {
        listOf(KitSamples.pump(), KitSamples.trace(), KitSamples.check()).forEachIndexed { place, screen ->
            if (place == 0) show(screen, type = 2f) else shown = screen
            rule.waitForIdle()
            actions(screen).forEach { action ->
                val whole = scrolledTo(action.key)
                assertTrue("${action.key} lies outside: $whole", whole.left >= -0.5f && whole.right <= Stage.WIDE + 0.5f)
            }
            words().forEach { node ->
                val whole = place(node)
                assertTrue("${node.config} lies outside: $whole", whole.left >= -0.5f && whole.right <= Stage.WIDE + 0.5f)
            }
        }
        val check = (shown as Screen.Check).check
        assertTrue(place(check.done.key).bottom <= Stage.TALL)
    }

    @Test
    fun aReadingIsSaidOnceAndTheNextOneBeginsEmpty() {
        show(KitSamples.check())
        rule.onNodeWithTag("type-reading").performTextInput("262")
        repeat(2) { rule.onNodeWithTag("type-reading").performImeAction() }
        assertEquals(listOf<Event>(Event.Enter("sample", "reading", "262")), said.toList())
        shown = (shown as Screen.Check).let { it.copy(check = it.check.copy(readings = it.check.readings.copy(rows = it.check.readings.rows + ListRow("262 mmHg", "", "", "", null)))) }
        rule.waitForIdle()
        rule.onNodeWithTag("type-reading").assert(SemanticsMatcher.expectValue(SemanticsProperties.EditableText, AnnotatedString("")))
        rule.onNodeWithTag("type-reading").performTextInput("262")
        rule.onNodeWithTag("type-reading").performImeAction()
        assertEquals(2, said.size)
    }

    private fun show(screen: Screen, type: Float = 1f) {
        shown = screen
        val letters = typefaces()
        rule.setContent {
            CompositionLocalProvider(LocalDensity provides Density(Stage.DENSITY, type)) {
                Box(Modifier.requiredSize(Stage.WIDE.dp, Stage.TALL.dp).testTag("phone")) {
                    ScreenView(shown, letters, reducedMotion = true) { said += it }
                }
            }
        }
        rule.waitForIdle()
    }

    private fun pictures() {
        val findings = (shown as Screen.Findings).findings
        rule.onNodeWithTag("findings-head").assertContentDescriptionEquals(findings.spoken)
        findings.dial?.let { rule.onNodeWithTag("dial").assertContentDescriptionEquals(it.spoken) }
        val plots = findings.sections.mapNotNull { section -> section.plot?.let { section.key to it } }
        assertTrue(plots.isNotEmpty())
        plots.forEach { (key, plot) -> rule.onNodeWithTag("plot-$key").assertContentDescriptionEquals(plot.spoken) }
    }

    private fun actions(screen: Screen): List<Action> = when (screen) {
        is Screen.Findings -> screen.findings.run { asks.flatMap { it.actions } + actions + sections.flatMap { it.rows.mapNotNull(ListRow::open) + it.actions } }
        is Screen.Check -> screen.check.run {
            near + asks.flatMap { it.actions } + at.flatMap { it.options } + readings.rows.mapNotNull(ListRow::open) + setUp.flatMap { it.options } + done
        }
        else -> emptyList()
    }

    private fun touch(action: Action) {
        if (scrolls(action.key)) rule.onNodeWithTag(action.key).performScrollTo()
        rule.onNodeWithTag(action.key).performClick()
        rule.waitForIdle()
    }

    private fun drawn(words: String) =
        assertTrue("$words is not drawn", rule.onAllNodesWithText(words, substring = true).fetchSemanticsNodes().isNotEmpty())

    private fun roomy() {
        val touched = rule.onAllNodes(touchable).fetchSemanticsNodes().map { (it.tag() ?: "untagged ${it.id}") to place(it) }
        assertTrue("only ${touched.map { it.first }}", touched.size > 8)
        touched.forEachIndexed { index, (key, place) ->
            assertTrue("$key is too small: $place", place.width >= 55.9f && place.height >= 55.9f)
            touched.drop(index + 1).filter { (other, _) -> scrolls(other) == scrolls(key) }.forEach { (other, there) ->
                val apart = maxOf(there.left - place.right, place.left - there.right, there.top - place.bottom, place.top - there.bottom)
                assertTrue("$key and $other are $apart apart", apart >= 7.5f || listOf(key, other).all { it.startsWith("place-") })
            }
        }
    }

    private fun scrolls(key: String): Boolean =
        generateSequence(rule.onNodeWithTag(key).fetchSemanticsNode().parent) { it.parent }.any { it.config.contains(SemanticsActions.ScrollBy) }

    private fun scrolledTo(key: String): Rect {
        if (scrolls(key)) rule.onNodeWithTag(key).performScrollTo()
        return place(key)
    }

    private fun words() = rule.onAllNodes(SemanticsMatcher.keyIsDefined(SemanticsProperties.Text)).fetchSemanticsNodes()

    private fun place(key: String) = place(rule.onNodeWithTag(key).fetchSemanticsNode())

    /** Where a node lies on the phone, in dp. */
    private fun place(node: SemanticsNode): Rect {
        val phone = rule.onNodeWithTag("phone").fetchSemanticsNode().boundsInRoot
        val (x, y) = node.positionInRoot
        return Rect(x - phone.left, y - phone.top, x - phone.left + node.size.width, y - phone.top + node.size.height).let {
            Rect(it.left / Stage.DENSITY, it.top / Stage.DENSITY, it.right / Stage.DENSITY, it.bottom / Stage.DENSITY)
        }
    }

    private fun SemanticsNode.tag() = config.getOrNull(SemanticsProperties.TestTag)

    private companion object {
        val touchable = SemanticsMatcher("can be touched") { it.config.contains(SemanticsActions.OnClick) }
    }
}
