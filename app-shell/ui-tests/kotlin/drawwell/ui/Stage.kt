package drawwell.ui

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.requiredSize
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.runtime.key
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.ComposeContentTestRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performTouchInput
import androidx.compose.ui.unit.Density
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.Screen

/** A phone of 412 by 892, in which the app runs on the real core and every gesture is counted. */
class Stage(private val rule: ComposeContentTestRule, host: TestHost, fontScale: Float = 1f) {
    var host = host
        private set

    var gestures = 0
        private set
    private var type by mutableStateOf(fontScale)
    private var running by mutableStateOf(Conversation(host))

    val conversation get() = running
    val screen: Screen get() = checkNotNull(running.screen) { "nothing is shown: ${running.trouble}" }

    /** The record that is open now. */
    val core get() = host.core

    fun open() {
        rule.setContent {
            CompositionLocalProvider(LocalDensity provides Density(DENSITY, type)) {
                Box(Modifier.requiredSize(WIDE.dp, TALL.dp).testTag("phone"), Alignment.TopStart) {
                    key(running) { Shell(running, host) }
                }
            }
        }
        settle()
    }

    /** The program is gone without a word, and is started again. */
    fun startAnew(on: TestHost = host) {
        host = on
        running = Conversation(on)
        settle()
    }

    fun largeType() {
        type = 2f
        settle()
    }

    /** Without a gesture: what is not what the test is about. */
    fun say(event: Event) {
        running.send(event)
        settle()
    }

    fun tap(key: String) {
        gestures++
        rule.onNodeWithTag(key).performClick()
        settle()
    }

    fun draw(column: String, to: Float) {
        gestures++
        rule.onNodeWithTag("column-$column").performTouchInput {
            down(Offset(width / 2f, height * 0.95f))
            moveTo(Offset(width / 2f, height * (1 - to)))
            up()
        }
        settle()
    }

    /** The thumb goes down on a column and from height to height, and stays. */
    fun hold(column: String, vararg heights: Float) = heights.forEachIndexed { index, height ->
        rule.onNodeWithTag("column-$column").performTouchInput {
            val at = Offset(this.width / 2f, this.height * (1 - height))
            if (index == 0) down(at) else moveTo(at)
        }
        settle()
    }

    fun letGo(column: String) {
        gestures++
        rule.onNodeWithTag("column-$column").performTouchInput { up() }
        settle()
    }

    fun settle() = rule.waitForIdle()

    /** Where a node lies on the phone, in dp. */
    fun place(node: SemanticsNode): Rect {
        val phone = rule.onNode(hasTestTag("phone")).fetchSemanticsNode().boundsInRoot
        val bounds = Rect(node.positionInRoot, androidx.compose.ui.geometry.Size(node.size.width.toFloat(), node.size.height.toFloat()))
        return Rect(
            (bounds.left - phone.left) / DENSITY,
            (bounds.top - phone.top) / DENSITY,
            (bounds.right - phone.left) / DENSITY,
            (bounds.bottom - phone.top) / DENSITY,
        )
    }

    companion object {
        const val WIDE = 412
        const val TALL = 892

        /** Small enough for the whole phone to lie within the test's own window. */
        const val DENSITY = 0.75f
    }
}
