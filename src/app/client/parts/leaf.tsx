import type { ReactNode } from "react";
import { Dialog, Modal, ModalOverlay } from "react-aria-components";

/** A leaf that rises over the page; the rest waits behind it. */
export function Leaf({
  open,
  onClose,
  label,
  alert = false,
  className = "",
  children,
}: {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly label: string;
  /** An alert is answered, not dismissed. */
  readonly alert?: boolean;
  readonly className?: string;
  readonly children: ReactNode;
}) {
  return (
    <ModalOverlay
      className="veil"
      isOpen={open}
      isDismissable={!alert}
      isKeyboardDismissDisabled={alert}
      onOpenChange={(next) => !next && onClose()}
    >
      <Modal className={`leaf ${className}`}>
        <Dialog aria-label={label} role={alert ? "alertdialog" : "dialog"}>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
