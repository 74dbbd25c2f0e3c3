package drawwell.ui

import androidx.compose.ui.test.assertContentDescriptionEquals
import androidx.compose.ui.test.assertIsSelected
import androidx.compose.ui.test.onNodeWithTag
import drawwell.surface.Screen
import org.junit.Test

/** What the voice hears is what the core says. */
abstract class SpokenContract : ShellContract() {
    @Test
    fun theStripIsOneThingWithItsDescription() {
        val stage = begun()
        stage.tap("start")
        stage.host.pass(30)
        stage.tap("mark-letdown")
        val running = (stage.screen as Screen.Running).running
        rule.onNodeWithTag("strip").assertContentDescriptionEquals(running.strip.spoken)
        rule.onNodeWithTag("finish").assertContentDescriptionEquals(running.finish.spoken)
        running.marks.forEach { rule.onNodeWithTag(it.key).assertContentDescriptionEquals(it.spoken) }
        rule.onNodeWithTag("place-now").assertIsSelected()
    }

    @Test
    fun theClocksTellHowLongEachSideRested() {
        val stage = begun()
        val ready = (stage.screen as Screen.Ready).ready
        ready.rests.forEach {
            rule.onNodeWithTag("rest-${it.part.name.lowercase()}").assertContentDescriptionEquals(it.spoken)
        }
    }
}
