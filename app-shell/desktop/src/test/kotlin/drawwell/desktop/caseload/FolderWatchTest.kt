package drawwell.desktop.caseload

import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.rules.TemporaryFolder
import java.io.File

/** Each new file in the folder is told of once, when nobody writes to it any more. */
class FolderWatchTest {
    @get:Rule
    val temporary = TemporaryFolder()

    private val mind get() = temporary.root.resolve("watched")
    private val inbox get() = temporary.root.resolve("inbox").apply { mkdirs() }

    private fun watching() = FolderWatch(mind).apply { choose(inbox) }

    private fun came(name: String, contents: String = "x"): File = inbox.resolve(name).apply { writeText(contents) }

    private fun FolderWatch.looks(times: Int) = List(times) { look() }.flatten().map { it.name }

    @Test
    fun whatLiesThereAlreadyIsNoNews() {
        came("old.age")
        assertEquals(emptyList<String>(), watching().looks(3))
    }

    @Test
    fun aNewFileIsToldOfOnce() {
        val watch = watching()
        came("new.age")
        assertEquals(listOf("new.age"), watch.looks(5))
    }

    @Test
    fun aFileThatGrowsWaitsUntilItIsWhole() {
        val watch = watching()
        val file = came("big.age", "a")
        assertEquals(emptyList<String>(), watch.looks(1))
        file.appendText("b")
        assertEquals(emptyList<String>(), watch.looks(1))
        assertEquals(listOf("big.age"), watch.looks(3))
    }

    @Test
    fun anEmptyOneAndWhatIsHalfLoadedWait() {
        val watch = watching()
        came("empty.age", "")
        came("half.age.part")
        inbox.resolve("folder").mkdirs()
        assertEquals(emptyList<String>(), watch.looks(3))
        assertTrue(inbox.resolve("half.age.part").renameTo(inbox.resolve("half.age")))
        assertEquals(listOf("half.age"), watch.looks(3))
    }

    @Test
    fun anotherFileOfTheSameNameIsNews() {
        val watch = watching()
        came("record.age", "monday")
        assertEquals(listOf("record.age"), watch.looks(3))
        came("record.age", "on tuesday")
        assertEquals(listOf("record.age"), watch.looks(3))
    }

    @Test
    fun theChoiceAndWhatIsKnownOutliveTheProgram() {
        val watch = watching()
        came("one.age")
        assertEquals(listOf("one.age"), watch.looks(3))
        came("two of them.age")
        val next = FolderWatch(mind)
        assertEquals("inbox", next.name)
        assertEquals(listOf("two of them.age"), next.looks(3))
        next.leave()
        assertEquals("", FolderWatch(mind).name)
    }

    @Test
    fun aFolderThatIsAwayForAWhileBringsNothingTwice() {
        val watch = watching()
        came("one.age")
        watch.looks(3)
        val away = temporary.root.resolve("away")
        assertTrue(temporary.root.resolve("inbox").renameTo(away))
        assertEquals(emptyList<String>(), watch.looks(2))
        assertTrue(away.renameTo(temporary.root.resolve("inbox")))
        assertEquals(emptyList<String>(), watch.looks(3))
    }

    @Test
    fun aMindThatCannotBeReadWatchesNothing() {
        mind.writeText("\u0000\n x y z")
        assertEquals(emptyList<String>(), FolderWatch(mind).looks(2))
    }
}
