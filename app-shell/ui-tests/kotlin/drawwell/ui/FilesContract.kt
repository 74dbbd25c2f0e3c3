package drawwell.ui

import drawwell.surface.Event
import drawwell.surface.Export
import drawwell.surface.Place
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** Whole records go out to a file and come back from it. */
abstract class FilesContract : ShellContract() {
    @Test
    fun aRecordHandedOverComesBackInAnother() {
        val stage = begun()
        stage.tap("start")
        stage.host.pass(600)
        stage.tap("finish")
        stage.host.file = folder.root.resolve("whole.jsonl")
        stage.say(Event.Export(Export.Record))
        assertTrue(folder.root.resolve("whole.jsonl").length() > 0)

        val other = TestHost(typefaces(), folder.newFolder("other").resolve("record.drawwell"))
        other.milliseconds = stage.host.milliseconds
        other.openCore().use { core ->
            core.importFile(folder.root.resolve("whole.jsonl").path, other.now())
            val day = core.show(Place.Day(0u), other.now()) as Screen.Day
            assertEquals(1, day.day.entries.size)
        }
    }

    @Test
    fun lookingAroundLeavesTheOwnRecordAsItWas() {
        val stage = begun()
        stage.tap("start")
        stage.say(Event.LookAround)
        assertTrue(stage.screen !is Screen.Running)
        stage.say(Event.LeaveLookAround)
        assertTrue(stage.screen is Screen.Running)
    }
}
