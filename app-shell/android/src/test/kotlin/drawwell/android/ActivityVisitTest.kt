package drawwell.android

import android.content.Intent
import android.net.Uri
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import androidx.compose.ui.test.onNodeWithTag
import drawwell.surface.Event
import drawwell.surface.Export
import drawwell.surface.Screen
import drawwell.ui.SomeDesk
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.rules.TemporaryFolder
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import drawwell.surface.Clock
import java.io.File

/** The consultant's code is read by the phone's own camera; the sealed record leaves by the share sheet, and her plan comes in. */
@RunWith(RobolectricTestRunner::class)
class ActivityVisitTest {
    @get:Rule(order = 1)
    val rule = createEmptyComposeRule()

    @get:Rule(order = 2)
    val folder = TemporaryFolder()

    private val phone by lazy { Phone(rule) }

    private fun now(): Clock = phone.app.home.records.own().now()

    private fun link(line: String) = Intent(Intent.ACTION_VIEW, Uri.parse(line)).addCategory(Intent.CATEGORY_BROWSABLE)

    private fun scanned(line: String) = link(line).setClass(phone.app, MainActivity::class.java)

    private fun file(name: String, bytes: ByteArray, type: String): Intent {
        val uri = Uri.parse("content://stranger/$name")
        shadowOf(phone.app.contentResolver).registerInputStream(uri, bytes.inputStream())
        return Intent(phone.app, MainActivity::class.java).setAction(Intent.ACTION_VIEW).setDataAndType(uri, type)
    }

    private fun answers(intent: Intent) = phone.app.packageManager.queryIntentActivities(intent, 0).map { it.activityInfo.packageName }

    @Test
    fun theLinkOfACardAndASealedFileAreForThisApp() {
        val own = listOf(phone.app.packageName)
        assertEquals(own, answers(link("drawwell:consultant?v=1")))
        listOf("2026-05-28.drawwell-plan", "a.b/2026-05-28.drawwell-family").forEach { name ->
            val odd = Intent(Intent.ACTION_VIEW).setDataAndType(Uri.parse("content://mail/$name"), "application/x-anything")
            assertEquals(name, own, answers(odd))
        }
        assertEquals(emptyList<String>(), answers(Intent(Intent.ACTION_VIEW).setDataAndType(Uri.parse("content://mail/a.png"), "image/png")))
        assertNull(Received.card(Intent(Intent.ACTION_VIEW, Uri.parse("https://drawwell/consultant"))))
        assertNull(Received.card(Intent(Intent.ACTION_SEND, Uri.parse("drawwell:consultant?v=1"))))
    }

    @Test
    fun aScannedCodeAsksForItsWordsToBeComparedAndNothingIsSharedBefore() {
        phone.begin()
        SomeDesk(folder.root, ::now).use { desk ->
            phone.receives(scanned(desk.card()))
            phone.until { phone.screen is Screen.Findings }
            val offered = (phone.screen as Screen.Findings).findings.actions.map { it.event }
            assertTrue(offered.any { it is Event.TakeWaiting } && offered.none { (it as? Event.Export)?.what is Export.SealedFor })
        }
    }

    @Test
    fun aCodeThatIsNoneOfHersIsSaidAndTakesNobodyIn() {
        phone.begin()
        phone.receives(scanned("drawwell:consultant?v=1&name=Ada"))
        phone.until { phone.conversation.trouble != null }
        rule.onNodeWithTag("trouble").assertIsDisplayed()
        assertTrue(phone.screen is Screen.Ready)
    }

    @Test
    fun theSealedRecordGoesOutThroughTheShareSheetAndHerPlanComesBack() {
        phone.begin()
        SomeDesk(folder.root, ::now).use { desk ->
            phone.receives(scanned(desk.card()))
            phone.until { phone.screen is Screen.Findings }
            phone.tap("words-same")
            phone.tap("share-with")
            val chooser = shadowOf(phone.app).nextStartedActivity
            val send = checkNotNull(chooser.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java))
            assertEquals("application/octet-stream", send.type)
            val uri = checkNotNull(send.getParcelableExtra(Intent.EXTRA_STREAM, Uri::class.java))
            assertTrue("$uri", uri.path.orEmpty().endsWith(".drawwell-family"))
            val sealed = File(folder.root, "sealed").apply { writeBytes(phone.app.contentResolver.openInputStream(uri)!!.use { it.readBytes() }) }
            assertTrue(sealed.readText(Charsets.ISO_8859_1).startsWith("age-encryption.org/v1"))

            val plan = desk.answers(sealed)
            phone.receives(file(plan.name, plan.readBytes(), "application/octet-stream"))
            phone.until { rule.onAllNodes(androidx.compose.ui.test.hasTestTag("plan-accept-all")).fetchSemanticsNodes().isNotEmpty() }
            assertNotNull(phone.screen as? Screen.Findings)
        }
    }
}
