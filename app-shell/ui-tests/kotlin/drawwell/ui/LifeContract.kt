package drawwell.ui

import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.onNodeWithTag
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** What outlives the program. */
abstract class LifeContract : ShellContract() {
    @Test
    fun aSessionRunsOnWhenTheProgramWasKilled() {
        val stage = begun()
        stage.tap("start")
        stage.host.pass(60)
        stage.tap("mark-letdown")
        stage.host.pass(30)
        stage.startAnew()
        val running = stage.screen as Screen.Running
        assertEquals(1, running.running.strip.notches.size)
        rule.onNodeWithTag("finish").assertIsDisplayed()
    }

    @Test
    fun theCopyOfAKilledRecordHoldsEveryAnsweredTap() {
        val stage = begun()
        stage.tap("start")
        stage.host.pass(60)
        stage.tap("mark-letdown")
        val copy = folder.newFolder("copy")
        folder.root.listFiles().orEmpty().filter { it.isFile }.forEach { it.copyTo(copy.resolve(it.name)) }
        val other = TestHost(typefaces(), copy.resolve("record.drawwell")).apply { milliseconds = stage.host.milliseconds }
        other.openCore().use { core ->
            val running = core.here(other.now()) as Screen.Running
            assertEquals(1, running.running.strip.notches.size)
        }
    }

    @Test
    fun whatWasDoneBeforeARestartCanBeTakenBackAfterIt() {
        val stage = begun()
        stage.tap("start")
        stage.host.pass(60)
        stage.tap("mark-letdown")
        stage.startAnew()
        stage.tap("undo")
        assertTrue((stage.screen as Screen.Running).running.strip.notches.isEmpty())
        stage.tap("redo")
        assertEquals(1, (stage.screen as Screen.Running).running.strip.notches.size)
    }
}
