package drawwell.ui

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.requiredSize
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.assertContentDescriptionEquals
import androidx.compose.ui.test.assertIsSelected
import androidx.compose.ui.test.onAllNodesWithText
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.onNodeWithText
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.surface.Hand
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** At first sight: when, in how long, what can be done, and the whole night. All of it told, within reach, turned round, and readable at twice the type. */
abstract class TonightContract : ShellContract() {
    private val said = mutableListOf<Event>()
    private var shown by mutableStateOf(TonightSamples.night())
    private val tonight get() = shown.tonight

    @Test
    fun theTimeTheActionsTheStartAndTheWholeNightAreSeenWithoutScrolling() {
        show(TonightSamples.night())
        (listOf("tonight-head", "night-picture", "start") + tonight.actions.map { it.key }).forEach { tag ->
            val node = rule.onNodeWithTag(tag).fetchSemanticsNode()
            val whole = place(node)
            assertTrue("$tag lies outside: $whole", whole.top >= 0f && whole.bottom <= Stage.TALL)
            assertEquals("$tag is cut off", node.size.height.toFloat(), node.boundsInRoot.height, 1f)
        }
        val order = listOf("tonight-head", "night-picture", "plan-earlier", "start").map { place(it) }
        order.zipWithNext().forEach { (over, under) -> assertTrue("$over, $under", over.bottom <= under.top + 0.5f) }
    }

    @Test
    fun allThatIsTouchedAtFirstSightLiesUnderTheThumbIsLargeAndApart() {
        show(TonightSamples.night())
        val places = (tonight.actions.map { it.key } + "start" + "undo").associateWith { place(it) }
        places.forEach { (key, place) ->
            assertTrue("$key lies too high: $place", place.top >= Stage.TALL * 0.4f - 1)
            assertTrue("$key is too small: $place", place.width >= 55.9f && place.height >= 55.9f)
        }
        val all = places.values.toList()
        all.forEachIndexed { index, one -> all.drop(index + 1).forEach { assertTrue("$one, $it", apart(one, it) >= 7.5f) } }
        val row = tonight.actions.map { places.getValue(it.key) }
        row.forEach { assertEquals(row.first().top, it.top, 1f) }
    }

    @Test
    fun theLeftHandSeesItTurnedRoundButEarlierStaysBeforeLater() {
        show(TonightSamples.night())
        val keys = listOf("plan-snooze", "plan-skip", "undo")
        val right = keys.associateWith { place(it) }
        shown = TonightSamples.night(Hand.LEFT)
        rule.waitForIdle()
        keys.forEach { assertEquals(it, Stage.WIDE - right.getValue(it).right, place(it).left, 2f) }
        assertTrue(place("plan-earlier").right < place("plan-later").left)
        assertTrue(place("plan-skip").right < place("plan-earlier").left)
    }

    @Test
    fun allOfItIsToldAndDrawn() {
        show(TonightSamples.night())
        rule.onNodeWithTag("tonight-head").assertContentDescriptionEquals(tonight.spoken)
        rule.onNodeWithTag("night-picture").assertContentDescriptionEquals(checkNotNull(tonight.night).spoken)
        tonight.figures.forEach { rule.onNodeWithTag("figure-${it.key}").performScrollTo().assertContentDescriptionEquals(it.spoken) }
        tonight.asks.forEach { drawn(it.text) }
        tonight.times.rows.forEach { drawn(it.detail) }
        tonight.sections.forEach { section ->
            rule.onNodeWithTag(section.key).performScrollTo()
            (listOf(section.title) + section.lines + section.rows.map { it.title }).forEach { drawn(it) }
        }
        drawn(checkNotNull(tonight.night).legend)
    }

    @Test
    fun whatIsTouchedSaysItsEvent() {
        listOf(TonightSamples.night(), TonightSamples.asked()).forEachIndexed { index, screen ->
            if (index == 0) show(screen) else shown = screen
            rule.waitForIdle()
            actions().forEach { action ->
                said.clear()
                if (scrolls(action.key)) rule.onNodeWithTag(action.key).performScrollTo()
                rule.onNodeWithTag(action.key).performClick()
                assertEquals(action.key, listOf(action.event), said.toList())
            }
        }
    }

    @Test
    fun atTwiceTheTypeNothingIsCutOffAndTheStartStays() {
        listOf(TonightSamples.night(), TonightSamples.asked()).forEachIndexed { index, screen ->
            if (index == 0) show(screen, type = 2f) else shown = screen
            rule.waitForIdle()
            assertTrue(place("start").bottom <= Stage.TALL)
            actions().forEach { action ->
                if (scrolls(action.key)) rule.onNodeWithTag(action.key).performScrollTo()
                within(action.key, rule.onNodeWithTag(action.key).fetchSemanticsNode())
            }
            words().forEach { within("${it.config}", it) }
        }
    }

    @Test
    fun atTwiceTheTypeAllThatCanBeDoneIsSeenWithoutScrolling() {
        show(TonightSamples.night(), type = 2f)
        (listOf("tonight-head", "start") + tonight.actions.map { it.key }).forEach { tag ->
            val node = rule.onNodeWithTag(tag).fetchSemanticsNode()
            assertTrue("$tag lies outside: ${place(node)}", place(node).bottom <= Stage.TALL)
            assertEquals("$tag is cut off", node.size.height.toFloat(), node.boundsInRoot.height, 1f)
        }
    }

    @Test
    fun aTapOnThePictureOpensWhatItsSignsMeanAndClosesIt() {
        show(TonightSamples.night())
        val legend = checkNotNull(tonight.night).legend
        drawn(legend)
        rule.onNodeWithTag("night-picture").performClick()
        rule.onNodeWithText(legend).assertDoesNotExist()
        rule.onNodeWithTag("night-picture").performClick()
        drawn(legend)
    }

    @Test
    fun isOneTapFromTheFootAndFirstAsksHowManyADay() {
        val stage = begun()
        stage.tap("place-tonight")
        assertEquals(1, stage.gestures)
        rule.onNodeWithTag("place-tonight").assertIsSelected()
        rule.onNodeWithTag("tonight-head").assertContentDescriptionEquals(real(stage).spoken)
        val many = real(stage).choices.single().options.last()
        stage.tap(many.key)
        assertEquals(2, stage.gestures)
        rule.onNodeWithTag("night-picture").assertContentDescriptionEquals(checkNotNull(real(stage).night).spoken)
    }

    @Test
    fun oneTapMovesTheNextOneAndOneTakesThatBack() {
        val stage = begun()
        stage.tap("place-tonight")
        stage.tap(real(stage).choices.single().options.first().key)
        val before = real(stage).figure
        stage.tap("plan-later")
        assertTrue("$before stays", real(stage).figure != before)
        stage.tap("undo")
        assertEquals(before, real(stage).figure)
    }

    @Test
    fun howTheHostCanCallIsKnownToTonight() {
        val stage = begun()
        stage.tap("place-tonight")
        stage.tap(real(stage).choices.single().options.first().key)
        val before = real(stage).asks.map { it.key }
        stage.host.alarmsAre = Event.AlarmsAre(exact = false, shown = true)
        stage.conversation.wake()
        stage.settle()
        val news = real(stage).asks.filter { it.key !in before }
        assertEquals(1, news.size)
        rule.onNodeWithTag(news.single().key).performScrollTo()
    }

    private fun real(stage: Stage) = (stage.screen as Screen.Tonight).tonight

    private fun show(screen: Screen.Tonight, type: Float = 1f) {
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

    private fun actions(): List<Action> = with(tonight) {
        listOfNotNull(start) + actions + choices.flatMap { it.options } + asks.flatMap { it.actions } + times.rows.mapNotNull { it.open } +
            sections.flatMap { section -> section.rows.mapNotNull { it.open } + section.actions }
    }.distinctBy { it.key } + shown.frame.places

    private fun drawn(words: String) = assertTrue("$words is not drawn", rule.onAllNodesWithText(words).fetchSemanticsNodes().isNotEmpty())

    private fun words(): List<SemanticsNode> = rule.onAllNodes(SemanticsMatcher("words") { it.config.getOrNull(SemanticsProperties.Text) != null }).fetchSemanticsNodes()

    private fun within(what: String, node: SemanticsNode) = place(node).let {
        assertTrue("$what lies outside: $it", it.left >= -0.5f && it.right <= Stage.WIDE + 0.5f)
    }

    private fun scrolls(key: String): Boolean =
        generateSequence(rule.onNodeWithTag(key).fetchSemanticsNode().parent) { it.parent }.any { it.config.contains(SemanticsActions.ScrollBy) }

    private fun apart(one: Rect, other: Rect): Float =
        maxOf(maxOf(other.left - one.right, one.left - other.right), maxOf(other.top - one.bottom, one.top - other.bottom))

    private fun place(tag: String): Rect = place(rule.onNodeWithTag(tag).fetchSemanticsNode())

    private fun place(node: SemanticsNode): Rect {
        val phone = rule.onNodeWithTag("phone").fetchSemanticsNode().positionInRoot
        val size = Size(node.size.width.toFloat(), node.size.height.toFloat()) / Stage.DENSITY
        return Rect((node.positionInRoot - phone) / Stage.DENSITY, size)
    }
}
