package drawwell.android

import android.content.Intent
import android.net.Uri
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import androidx.compose.ui.test.onNodeWithTag
import drawwell.surface.Event
import drawwell.surface.Export
import drawwell.surface.Place
import drawwell.surface.Screen
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import java.io.ByteArrayInputStream
import java.io.FileNotFoundException

/** Files go out through the share sheet and come in from other apps. */
@RunWith(RobolectricTestRunner::class)
class ActivityFilesTest {
    @get:Rule
    val rule = createEmptyComposeRule()

    private val phone by lazy { Phone(rule) }

    private fun oneSession() {
        phone.begin()
        phone.tap("start")
        phone.pass(600)
        phone.tap("finish")
    }

    private fun shared(): Intent {
        phone.say(Event.Export(Export.Record))
        val chooser = shadowOf(phone.app).nextStartedActivity
        assertEquals(Intent.ACTION_CHOOSER, chooser.action)
        return checkNotNull(chooser.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java))
    }

    private fun Intent.file(): Uri = checkNotNull(getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java))

    private fun read(file: Uri) = phone.app.contentResolver.openInputStream(file)!!.use { it.readBytes() }

    private fun app(place: Place): Screen = phone.app.home.records.own().let { it.core.show(place, it.now()) }

    private fun entries() = (app(Place.Day(0u)) as Screen.Day).day.entries.size

    private fun bringing(bytes: ByteArray, type: String): Intent {
        val uri = Uri.parse("content://stranger/file")
        shadowOf(phone.app.contentResolver).registerInputStream(uri, ByteArrayInputStream(bytes))
        return Intent(phone.app, MainActivity::class.java).setAction(Intent.ACTION_VIEW).setDataAndType(uri, type)
    }

    @Test
    fun aRecordIsHandedOverWithItsTypeAndLeaveToReadIt() {
        oneSession()
        val send = shared()
        assertEquals(Intent.ACTION_SEND, send.action)
        assertEquals("application/x-ndjson", send.type)
        assertTrue(send.flags and Intent.FLAG_GRANT_READ_URI_PERMISSION != 0)
        assertEquals(0, send.flags and Intent.FLAG_GRANT_WRITE_URI_PERMISSION)
        assertEquals("content", send.file().scheme)
        assertEquals(send.file(), send.clipData?.getItemAt(0)?.uri)
        assertEquals(send.type, phone.app.contentResolver.getType(send.file()))
        assertTrue(read(send.file()).isNotEmpty())
    }

    @Test
    fun whatWasHandedOverIsOpenedAgainWhateverItIsCalled() {
        oneSession()
        val file = read(shared().file())
        phone.app.filesDir.listFiles().orEmpty().forEach { it.delete() }
        phone.processDies()
        assertEquals(0, entries())
        phone.open(bringing(file, "application/octet-stream"))
        phone.until { entries() == 1 }
    }

    @Test
    fun onlyWhatWasHandedOverIsRead() {
        oneSession()
        val file = shared().file()
        val resolver = phone.app.contentResolver
        val record = Uri.parse("content://${file.authority}/..%2F..%2Ffiles%2Frecord.drawwell")
        val beside = Uri.parse("content://${file.authority}/../files/record.drawwell")
        listOf(record, beside, Uri.parse("content://${file.authority}/")).forEach {
            assertThrows(FileNotFoundException::class.java) { resolver.openFileDescriptor(it, "r") }
        }
        assertThrows(FileNotFoundException::class.java) { resolver.openFileDescriptor(file, "w") }
        resolver.query(file, null, null, null)!!.use {
            assertTrue(it.moveToFirst())
            assertEquals(file.lastPathSegment, it.getString(0))
            assertEquals(read(file).size.toLong(), it.getLong(1))
        }
    }

    @Test
    fun onlyTheLastOneIsKept() {
        oneSession()
        val first = shared().file()
        assertNotEquals(first, shared().file())
        assertThrows(FileNotFoundException::class.java) { read(first) }
    }

    @Test
    fun aShareThatIsCancelledChangesNothing() {
        oneSession()
        phone.say(Event.Go(Place.Family))
        val before = phone.screen
        shared()
        phone.scenario.moveToState(androidx.lifecycle.Lifecycle.State.CREATED)
        phone.scenario.moveToState(androidx.lifecycle.Lifecycle.State.RESUMED)
        phone.settle()
        assertNull(phone.conversation.trouble)
        assertEquals(before::class, phone.screen::class)
        assertEquals(1, entries())
        phone.tap("place-now")
        rule.onNodeWithTag("place-now").assertIsDisplayed()
    }

    @Test
    fun aFileThatLiesAboutItsTypeIsRefusedByItsNameAndAddsNothing() {
        val picture = byteArrayOf(0x89.toByte(), 'P'.code.toByte(), 'N'.code.toByte(), 'G'.code.toByte(), 13, 10, 26, 10, 0, 1, 2)
        oneSession()
        phone.receives(bringing(picture, "application/x-ndjson"))
        phone.until { phone.conversation.trouble != null }
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        assertEquals(1, entries())
    }

    @Test
    fun aFileThatCannotBeReadIsSaidToBeNone() {
        oneSession()
        val gone = Uri.parse("content://${phone.app.packageName}.handed-over/gone/gone.jsonl")
        phone.receives(Intent(phone.app, MainActivity::class.java).setAction(Intent.ACTION_SEND).putExtra(Intent.EXTRA_STREAM, gone))
        phone.until { phone.conversation.trouble != null }
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        assertEquals(1, entries())
    }

    private fun copies() = listOf("received", "handed-over").flatMap { phone.app.cacheDir.resolve(it).walk().filter { file -> file.isFile }.toList() }

    @Test
    fun nothingThatCameInStaysBehindAndErasingLetsGoOfWhatWentOut() {
        oneSession()
        val file = read(shared().file())
        phone.receives(bringing(file, "application/x-ndjson"))
        phone.until { phone.screen is Screen.List }
        assertEquals(1, copies().size)
        assertEquals("handed-over", copies().single().parentFile?.parentFile?.name)
        phone.say(Event.EraseRecord)
        assertEquals(0, copies().size)
    }

    @Test
    fun aFileFarLongerThanAnyRecordIsCopiedNoFurtherThanItIsTakenIn() {
        phone.begin()
        val endless = object : java.io.InputStream() {
            override fun read() = 'x'.code
            override fun read(to: ByteArray, from: Int, most: Int) = most.also { to.fill('x'.code.toByte(), from, from + most) }
        }
        val uri = Uri.parse("content://stranger/endless")
        shadowOf(phone.app.contentResolver).registerInputStream(uri, endless)
        val copy = Received(phone.app).copy(uri)
        assertEquals(drawwell.surface.longestFile().toLong() + 1, copy.length())
        Received(phone.app).empty()
    }

    @Test
    fun aFileOfThePhoneItselfIsNotTakenForSomeoneElses() {
        val own = Uri.fromFile(phone.app.filesDir.resolve("record.drawwell"))
        assertNull(Received.from(Intent(Intent.ACTION_VIEW, own)))
        assertNull(Received.from(Intent(Intent.ACTION_MAIN)))
    }

    @Test
    fun aFileIsPickedWithTheSystemsOwnPicker() {
        oneSession()
        phone.say(Event.PickRecord)
        phone.activity {
            val picker = shadowOf(it).nextStartedActivityForResult
            assertEquals(Intent.ACTION_OPEN_DOCUMENT, picker.intent.action)
            shadowOf(it).receiveResult(picker.intent, android.app.Activity.RESULT_CANCELED, null)
        }
        assertNull(phone.conversation.trouble)
    }

    @Test
    fun theInventedFamilyComesWithTheApp() {
        oneSession()
        phone.say(Event.LookAround)
        phone.say(Event.Go(Place.Day(1u)))
        assertTrue((phone.screen as Screen.Day).day.entries.size > 1)
        phone.say(Event.LeaveLookAround)
        assertEquals(1, entries())
    }
}
