package drawwell.desktop

import drawwell.ui.CheckContract

class DesktopCheckTest : CheckContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
