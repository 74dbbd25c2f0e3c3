package drawwell.android

import drawwell.ui.CheckContract
import org.junit.Rule
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner

@RunWith(RobolectricTestRunner::class)
class AndroidCheckTest : CheckContract() {
    @get:Rule(order = 0)
    val window = EmptyWindow()

    override fun typefaces() = AndroidTypefaces.load(window.assets)
}
