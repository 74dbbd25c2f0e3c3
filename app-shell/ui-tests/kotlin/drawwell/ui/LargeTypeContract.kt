package drawwell.ui

import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performScrollTo
import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen
import org.junit.Assert.assertTrue
import org.junit.Test

/** At twice the type, all that is tapped can be come by, and what ends or starts a session never scrolls away. */
abstract class LargeTypeContract : ShellContract() {
    @Test
    fun welcome() {
        val stage = Stage(rule, host(), 2f)
        stage.open()
        reachable(stage, "begin")
    }

    @Test
    fun beforeASession() = reachable(begun(2f), "start")

    @Test
    fun whileItRuns() {
        val stage = begun(2f)
        stage.tap("start")
        stage.say(Event.Mark(drawwell.surface.Deed.HURTS))
        reachable(stage, "finish")
    }

    @Test
    fun forAmounts() {
        val stage = begun(2f)
        stage.tap("start")
        stage.host.pass(600)
        stage.tap("finish")
        reachable(stage, "amounts-later", "amounts-done")
    }

    @Test
    fun dayTonightSupplyKitAndFamily() {
        val stage = begun(2f)
        stage.tap("start")
        stage.host.pass(600)
        stage.tap("finish")
        listOf(Place.Day(0u), Place.Tonight, Place.Supply(28u), Place.Kit, Place.Visit, Place.Family).forEach {
            stage.say(Event.Go(it))
            reachable(stage, "place-now")
        }
    }

    @Test
    fun supplyOfSomeDays() {
        val stage = begun(2f)
        SomeDays.on(stage)
        stage.say(Event.Go(Place.Supply(7u)))
        reachable(stage, "place-now", "place-visit")
    }

    @Test
    fun theVisitSheetOfSomeDays() {
        val stage = begun(2f)
        SomeDays.on(stage)
        stage.say(Event.Go(Place.Sheet))
        reachable(stage, "hand-over-sheet", "place-now", "place-visit")
    }

    @Test
    fun aPumpItsCheckAndAFit() {
        val stage = begun(2f)
        val pump = SomeKit.pump(stage)
        reachable(stage, "place-now")
        stage.say(Event.BeginCheck(pump))
        reachable(stage, "done", "place-now")
        SomeKit.read(stage, "262")
        reachable(stage, "done", "place-now")
        stage.say(Event.Go(Place.Pump(pump)))
        reachable(stage, "place-now")
        stage.say(Event.Go(Place.Fit))
        reachable(stage, "place-now")
    }

    @Test
    fun aSignItsCautionSharingAndErasing() {
        val stage = begun(2f)
        stage.say(Event.Add("sign", 0u))
        stage.say(Event.Enter((stage.screen as Screen.Form).form.id, "shivering", "yes"))
        reachable(stage, "place-now")
        stage.say(stage.screen.frame().notices.single { it.key == "caution" }.actions.single().event)
        reachable(stage, "place-now")
        listOf(Place.Cautions, Place.Visit, Place.Sharing, Place.Sealed, Place.Erasing).forEach {
            stage.say(Event.Go(it))
            reachable(stage, "place-now")
        }
    }

    @Test
    fun aCautionStandsWhereItIsSeenAtOnce() {
        val stage = begun(2f)
        val pump = SomeKit.pump(stage)
        stage.say(Event.Add("sign", 0u))
        stage.say(Event.Enter((stage.screen as Screen.Form).form.id, "shivering", "yes"))
        listOf(Event.Go(Place.Tonight), Event.BeginCheck(pump), Event.Go(Place.Now), Event.Start).forEach {
            stage.say(it)
            seen(stage, "caution")
        }
        stage.host.pass(600)
        stage.tap("finish")
        seen(stage, "caution")
    }

    private fun reachable(stage: Stage, vararg pinned: String) {
        pinned.forEach { seen(stage, it) }
        val keys = rule.onAllNodes(clickable).fetchSemanticsNodes().mapNotNull { it.tag() }
        assertTrue("nothing to tap", keys.size > 2)
        keys.distinct().forEach { key ->
            if (scrolls(key)) rule.onNodeWithTag(key).performScrollTo()
            seen(stage, key)
        }
    }

    private fun seen(stage: Stage, key: String) {
        val node = rule.onNodeWithTag(key).fetchSemanticsNode()
        val whole = stage.place(node)
        val bounds = node.boundsInRoot
        val shown = bounds.width * bounds.height / (node.size.width * node.size.height.toFloat())
        val within = whole.left >= -0.5f && whole.right <= Stage.WIDE + 0.5f && whole.top >= -0.5f && whole.bottom <= Stage.TALL + 0.5f
        assertTrue("$key lies outside the window: $whole", within)
        assertTrue("$key is cut off: ${shown * 100} % of $whole is seen", shown > 0.98f)
    }

    private fun scrolls(key: String): Boolean =
        generateSequence(rule.onNodeWithTag(key).fetchSemanticsNode().parent) { it.parent }
            .any { it.config.contains(SemanticsActions.ScrollBy) }

    private fun SemanticsNode.tag() = config.getOrNull(SemanticsProperties.TestTag)

    private companion object {
        val clickable = SemanticsMatcher("can be tapped") { it.config.contains(SemanticsActions.OnClick) }
    }
}
