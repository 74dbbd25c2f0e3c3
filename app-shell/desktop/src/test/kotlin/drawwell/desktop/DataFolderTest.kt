package drawwell.desktop

import drawwell.surface.Appearance
import drawwell.surface.Hand
import drawwell.surface.Palette
import java.io.File
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Rule
import org.junit.Test
import org.junit.rules.TemporaryFolder

class DataFolderTest {
    @get:Rule
    val temporary = TemporaryFolder()

    private fun record(system: String, vararg variables: Pair<String, String>) =
        DataFolder.ofPlatform(system, "/home/p", variables.toMap()::get).record

    @Test
    fun liesWhereThePlatformKeepsData() {
        assertEquals(File("/home/p/.local/share/drawwell/record.drawwell"), record("Linux"))
        assertEquals(File("/data/drawwell/record.drawwell"), record("Linux", "XDG_DATA_HOME" to "/data"))
        assertEquals(File("/home/p/.local/share/drawwell/record.drawwell"), record("Linux", "XDG_DATA_HOME" to "here"))
        assertEquals(File("/home/p/Library/Application Support/Drawwell/record.drawwell"), record("Mac OS X"))
        assertEquals(File("/roaming/Drawwell/record.drawwell"), record("Windows 11", "APPDATA" to "/roaming"))
    }

    @Test
    fun aDeviceThatAVersionBeforeNamedKeepsItsNameAndAnyOtherHasNoneHere() {
        val folder = temporary.newFolder("one")
        assertEquals("", DataFolder(folder).device())
        folder.resolve("device").writeText("named\n")
        assertEquals("it is of a record that is gone", "", DataFolder(folder).device())
        folder.resolve("record.drawwell").writeText("")
        assertEquals("named", DataFolder(folder).device())
    }

    @Test
    fun theLastLookIsFoundAgainWithoutTheRecord() {
        val folder = DataFolder(temporary.root)
        assertNull(folder.look().look)
        folder.look().keep(Appearance(Hand.LEFT, Palette.NIGHT))
        assertEquals(Appearance(Hand.LEFT, Palette.NIGHT), folder.look().look)
        temporary.root.resolve("look").writeText("no look at all")
        assertNull(folder.look().look)
    }

    @Test
    fun aLookThatCannotBeKeptHoldsUntilTheEndAndIsNoTrouble() {
        val look = DataFolder(temporary.root.resolve("nowhere")).look()
        look.keep(Appearance(Hand.LEFT, Palette.NIGHT))
        assertEquals(Appearance(Hand.LEFT, Palette.NIGHT), look.look)
    }
}
